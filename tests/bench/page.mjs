/**
 * How fast the page answers, in Chromium: `node tests/bench/page.mjs [options]`. Figures to judge, not a test.
 *
 *   --folder DIR   a built page; otherwise the page is built from its sources
 *   --edits N      edits in cells (50)
 *   --think MS     pause between the last digit and Enter (0); what is typed is computed meanwhile
 *   --wait MS      pause after an answer before the next edit (300), as long as a quick hand needs
 *   --loads N      cold loads, each in a browser profile of its own (5)
 *   --trace FILE   keeps the browser's trace of the edits, for the performance panel
 *   --cpu          adds processor time of the longest tasks, from a trace (slows the run a little)
 *   --plan FILE    another plan, put into the text of the page first
 *
 * An edit is counted from the Enter key's own time stamp to the end of the frame that shows the sentence for that
 * plan: `first` the early answer from one block, `full` the plan's own number of futures. Long tasks are those the
 * browser reports (wall time above 50 ms). The calibration is a fixed loop on the page's own thread, so that
 * figures from a busy machine can be told from slow code; `quiet` are the edits with an undisturbed one on either side.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { serve } from "../../apps/command/setup/serve.mjs";
import { instrument } from "./pageInstrument.mjs";

const { values: options } = parseArgs({
  options: {
    folder: { type: "string" },
    edits: { type: "string", default: "50" },
    think: { type: "string", default: "0" },
    wait: { type: "string", default: "300" },
    loads: { type: "string", default: "5" },
    trace: { type: "string" },
    cpu: { type: "boolean", default: false },
    plan: { type: "string" },
  },
});
const root = new URL("../../", import.meta.url).pathname;
const work = mkdtempSync(join(tmpdir(), "leeway-bench-"));
process.on("exit", () => rmSync(work, { recursive: true, force: true }));
const folder = options.folder ?? build();

/** The page in production mode, in a folder of its own. */
function build() {
  const args = ["build", "apps/notebook", "--outDir", join(work, "page"), "--emptyOutDir"];
  const env = { ...process.env, NODE_ENV: "production" };
  execFileSync(process.execPath, [join(root, "node_modules/vite/bin/vite.js"), ...args], {
    cwd: root,
    env,
    stdio: "pipe",
  });
  return join(work, "page");
}

function start() {
  const usual = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
  const executablePath = process.env.LEEWAY_CHROMIUM ?? usual.find((path) => existsSync(path));
  const args = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"];
  return chromium.launch({ executablePath, args });
}

/** The machine counts as quiet around an edit when the calibration before and after it took this much of the least. */
const quietFactor = 1.25;

const sorted = (list) => [...list].sort((a, b) => a - b);
const at = (list, p) => sorted(list)[Math.max(0, Math.ceil(p * list.length) - 1)] ?? Number.NaN;
const ms = (value) => `${value.toFixed(1)} ms`.padStart(10);

function tell(name, list) {
  const line = [
    ["median", 0.5],
    ["p95", 0.95],
    ["worst", 1],
  ].map(([word, p]) => `${word} ${ms(at(list, p))}`);
  console.log(`${name.padEnd(34)} least ${ms(at(list, 0))}  ${line.join("  ")}  (${list.length})`);
}

/** Waits until all is drawn, the re-runs included. */
async function rest(page) {
  await page.locator('main[data-busy="false"]').waitFor();
  await page.locator("leeway-tornado figure").nth(1).waitFor({ timeout: 120_000 });
  await page.locator(".tornado-status progress").waitFor({ state: "detached", timeout: 120_000 });
  await page.waitForTimeout(300);
}

async function open(browser, address) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(instrument);
  return { context, page, go: () => page.goto(address) };
}

/** Sizes of what the page itself needs before its first answer; workers apart. */
function sizes() {
  const html = readFileSync(join(folder, "index.html"), "utf8");
  const gzip = (path) => gzipSync(readFileSync(path)).length;
  const named = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(([, name]) => name);
  for (const name of named) {
    console.log(`  ${name}: ${statSync(join(folder, name)).size} bytes, gzip ${gzip(join(folder, name))}`);
  }
  for (const name of readdirSync(join(folder, "assets")).sort()) {
    if (!name.endsWith(".js") || named.includes(`assets/${name}`)) continue;
    const path = join(folder, "assets", name);
    console.log(`  later: assets/${name}: ${statSync(path).size} bytes, gzip ${gzip(path)}`);
  }
  return named
    .filter((name) => name.endsWith(".js"))
    .reduce((sum, name) => sum + gzip(join(folder, name)), 0);
}

/** Values that move the answer, in cells all over the tables; each differs from what stands there. */
async function cells(page) {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        "leeway-tasks input[data-column='3'], leeway-register input[data-column='4']",
      ),
    ]
      .filter((input) => !input.readOnly && Number(input.value) > 0)
      .map((input) => ({ label: input.getAttribute("aria-label"), value: Number(input.value) })),
  );
}

async function loads(address) {
  const still = [];
  const first = [];
  const full = [];
  const paint = [];
  const long = [];
  for (let k = 0; k < Number(options.loads); k++) {
    const browser = await start();
    const { page, go } = await open(browser, address);
    await go();
    await rest(page);
    const seen = await page.evaluate(() => window.bench.load());
    still.push(seen.still);
    first.push(seen.first);
    full.push(seen.full);
    paint.push(seen.paint);
    long.push(...seen.long);
    await browser.close();
  }
  tell("cold load to first paint", paint);
  tell("cold load to the answer, as built", still);
  tell("cold load to the page's own answer", first);
  tell("cold load to full answer", full);
  console.log(
    `long tasks while loading: ${long.length}; ${sorted(long).reverse().slice(0, 12).map(Math.round).join(", ")}`,
  );
  return { still, first, long };
}

async function edits(address) {
  const browser = await start();
  const { page, go } = await open(browser, address);
  await go();
  await rest(page);
  if (options.plan !== undefined) {
    await page.locator("#plan-text").fill(readFileSync(options.plan, "utf8"));
    await page.waitForTimeout(1500);
    await rest(page);
  }
  const list = await cells(page);
  const traced = options.trace !== undefined || options.cpu;
  if (traced)
    await browser.startTracing(page, {
      categories: ["toplevel", "devtools.timeline", "blink.user_timing", "__metadata"],
    });
  await page.evaluate(() => window.bench.begin());
  const seen = [];
  const loops = [];
  for (let k = 0; k < Number(options.edits); k++) {
    const { label, value } = list[(k * 7) % list.length];
    // Not by a locator: looking for a label among all of them is a long task of its own, and not the page's.
    await page.evaluate((label) => {
      const input = document.querySelector(`input[aria-label="${CSS.escape(label)}"]`);
      input.focus();
      input.select();
    }, label);
    await page.keyboard.type(String(value + 1 + (k % 5)));
    if (options.think !== "0") await page.waitForTimeout(Number(options.think));
    await page.evaluate(() => window.bench.arm());
    await page.keyboard.press("Enter");
    seen.push(await page.evaluate(() => window.bench.answered()));
    await page.waitForTimeout(Number(options.wait));
    loops.push(await page.evaluate(() => window.bench.loop()));
  }
  await rest(page);
  tell(
    "edit to first answer on screen",
    seen.map((one) => one.first),
  );
  tell(
    "edit to full answer on screen",
    seen.map((one) => one.full),
  );
  tell("calibration loop on the page", loops);
  const quiet = seen.filter(
    (_, k) => Math.max(loops[k - 1] ?? Number.POSITIVE_INFINITY, loops[k]) <= quietFactor * at(loops, 0),
  );
  if (quiet.length > 0) {
    tell(
      "quiet: edit to first answer",
      quiet.map((one) => one.first),
    );
    tell(
      "quiet: edit to full answer",
      quiet.map((one) => one.full),
    );
  }
  const long = await page.evaluate(() => window.bench.long());
  console.log(
    `long tasks while editing: ${long.length}; ${sorted(long).reverse().slice(0, 12).map(Math.round).join(", ")}`,
  );
  const found = { first: seen.map((one) => one.first), full: seen.map((one) => one.full), long };
  if (traced) {
    const trace = await browser.stopTracing();
    if (options.trace !== undefined) writeFileSync(options.trace, trace);
    const tasks = pageTasks(JSON.parse(trace.toString("utf8")).traceEvents);
    processorTime(JSON.parse(trace.toString("utf8")).traceEvents);
    console.log(
      `longest tasks, processor time: ${sorted(tasks)
        .reverse()
        .slice(0, 8)
        .map((x) => x.toFixed(1))
        .join(", ")} ms`,
    );
  }
  await browser.close();
  return found;
}

/** The four figures the page is judged by. */
function table(initial, loaded, edited) {
  const longest = (list) => (list.length === 0 ? "none above 50 ms" : `${Math.round(Math.max(...list))} ms`);
  const rows = [
    ["edit to first answer on screen, p95", ms(at(edited.first, 0.95)).trim()],
    ["edit to full answer on screen, p95", ms(at(edited.full, 0.95)).trim()],
    ["longest task of the page's thread, editing", longest(edited.long)],
    ["longest task of the page's thread, loading", longest(loaded.long)],
    ["cold load to the answer as built, median", ms(at(loaded.still, 0.5)).trim()],
    ["cold load to the page's own answer, median", ms(at(loaded.first, 0.5)).trim()],
    ["scripts before the first answer, gzip", `${(initial / 1000).toFixed(1)} kB`],
  ];
  console.log(
    `\n| figure | ${options.edits} edits, ${options.loads} loads, load of the machine ${loadavg()[0].toFixed(1)} |`,
  );
  console.log("| --- | --- |");
  for (const row of rows) console.log(`| ${row.join(" | ")} |`);
}

/**
 * Processor time that an edit takes until its answers are on the screen, on the page's own thread and on all its
 * workers together: what a busy machine can stretch but hardly add to.
 */
function processorTime(events) {
  const own = threadsNamed(events, "CrRendererMain");
  const workers = threadsNamed(events, "DedicatedWorker thread");
  const tasks = events.filter((one) => /RunTask$/.test(one.name) && one.tdur !== undefined);
  const marks = events.filter((one) => /^bench /.test(one.name)).sort((a, b) => a.ts - b.ts);
  const spent = { first: { own: [], workers: [] }, full: { own: [], workers: [] } };
  let from;
  for (const { name, ts } of marks) {
    if (name === "bench edit") from = ts;
    const sums = spent[name.slice(6)];
    if (sums === undefined || from === undefined) continue;
    const within = tasks.filter((one) => one.ts >= from - 2000 && one.ts < ts);
    const sum = (threads) =>
      within.reduce((all, one) => all + (threads.has(`${one.pid} ${one.tid}`) ? one.tdur / 1000 : 0), 0);
    sums.own.push(sum(own));
    sums.workers.push(sum(workers));
  }
  for (const [stage, sums] of Object.entries(spent)) {
    tell(`processor to ${stage} answer: page`, sums.own);
    tell(`processor to ${stage} answer: workers`, sums.workers);
  }
}

function threadsNamed(events, name) {
  return new Set(
    events
      .filter((one) => one.name === "thread_name" && one.args?.name === name)
      .map((one) => `${one.pid} ${one.tid}`),
  );
}

/** Processor time in ms of every task of the page's own thread. */
function pageTasks(events) {
  const threads = threadsNamed(events, "CrRendererMain");
  return events.flatMap((one) =>
    /RunTask$/.test(one.name) && one.tdur !== undefined && threads.has(`${one.pid} ${one.tid}`)
      ? [one.tdur / 1000]
      : [],
  );
}

const { address, server } = await serve(folder, 4380);
try {
  console.log(`The page at ${address}; load of the machine ${loadavg()[0].toFixed(1)}`);
  const initial = sizes();
  const loaded = await loads(address);
  table(initial, loaded, await edits(address));
} finally {
  server.closeAllConnections();
  server.close();
}
