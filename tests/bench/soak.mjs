/**
 * Whether the page stays as quick and as small as it was: `npm run soak`, or `node tests/bench/soak.mjs [options]`. Random
 * edits in cells all over the tables; the first tenth of them is held against the last, and the last against the first
 * quarter, when all that is kept for a while is kept: answers, texts as they were read, programs as they were compiled.
 * Figures to judge, not a test.
 *
 * Then edits are made in turns in this page and in one that was just opened: their quotient says whether it has become slower,
 * however much other work the machine has meanwhile.
 *
 *   --folder DIR   a built page; otherwise the one in apps/notebook/dist
 *   --edits N      edits (2000)
 *   --seed N       of what is edited (1)
 *   --turns N      edits in either page at the end (60)
 *
 * The heap is read after a collection that was asked for (Chrome DevTools Protocol, HeapProfiler.collectGarbage), every
 * twentieth edit; an edit is counted from its Enter to the frame that shows the full answer.
 */
import { existsSync } from "node:fs";
import { loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { chromium } from "playwright-core";
import { serve } from "../../apps/command/setup/serve.mjs";
import { heapOf, randomEdit, slopeOf } from "./randomEdits.mjs";

const { values: options } = parseArgs({
  options: {
    folder: { type: "string", default: fileURLToPath(new URL("../../apps/notebook/dist", import.meta.url)) },
    edits: { type: "string", default: "2000" },
    seed: { type: "string", default: "1" },
    turns: { type: "string", default: "60" },
  },
});
const edits = Number(options.edits);
const { address, server } = await serve(options.folder, 4480);
const usual = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const executablePath = process.env.LEEWAY_CHROMIUM ?? usual.find((path) => existsSync(path));
const args = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"];
const browser = await chromium.launch({ executablePath, args });
try {
  const open = async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    page.setDefaultTimeout(120_000);
    await page.goto(address);
    await page.locator('main[data-busy="false"] .sentence strong').first().waitFor();
    return page;
  };
  const page = await open();
  const session = await page.context().newCDPSession(page);
  const times = [];
  const heaps = [];
  for (let n = 0; n < edits; n++) {
    times.push(await randomEdit(page, Number(options.seed) * 100_003 + n));
    if (n % 20 === 19) heaps.push(await heapOf(session));
  }
  const tenth = Math.max(1, Math.floor(edits / 10));
  const middle = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
  const part = (list, from, to) => middle(list.slice(from, to));
  const few = Math.max(1, Math.floor(heaps.length / 10));
  console.log(`${edits} edits; load of the machine ${loadavg()[0].toFixed(1)}`);
  console.log("| median of              | first tenth | last tenth |");
  console.log("| ---------------------- | ----------- | ---------- |");
  const row = (name, first, last, unit) =>
    console.log(
      `| ${name.padEnd(22)} | ${`${first.toFixed(1)} ${unit}`.padEnd(11)} | ${`${last.toFixed(1)} ${unit}`.padEnd(10)} |`,
    );
  row("edit to full answer", part(times, 0, tenth), part(times, -tenth), "ms");
  row("heap after collection", part(heaps, 0, few) / 1e6, part(heaps, -few) / 1e6, "MB");
  const quarter = Math.floor(heaps.length / 4);
  const [from, to] = [part(heaps, quarter - few, quarter + few), part(heaps, -2 * few)];
  const grown = `${((100 * (to - from)) / from).toFixed(1)} %, ${Math.round(slopeOf(heaps.slice(quarter)) / 20)} bytes an edit`;
  console.log(
    `Heap from edit ${20 * quarter} to ${edits}: ${(from / 1e6).toFixed(2)} to ${(to / 1e6).toFixed(2)} MB, ${grown}`,
  );
  const fresh = await open();
  const both = { aged: [], fresh: [] };
  for (let n = -10; n < Number(options.turns); n++) {
    for (const [name, one] of [
      ["aged", page],
      ["fresh", fresh],
    ]) {
      await one.bringToFront();
      await one.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
      const took = await randomEdit(one, Number(options.seed) * 200_003 + n);
      // The first ones warm up.
      if (n >= 0) both[name].push(took);
    }
  }
  const [aged, young] = [middle(both.aged), middle(both.fresh)];
  console.log(
    `In turns, median of ${options.turns}: ${aged.toFixed(0)} ms in this page, ${young.toFixed(0)} ms in a fresh one, ${(aged / young).toFixed(2)}`,
  );
  const { nodes, jsEventListeners, documents } = await session.send("Memory.getDOMCounters");
  console.log(`At the end: ${nodes} nodes, ${jsEventListeners} listeners, ${documents} documents`);
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
}
