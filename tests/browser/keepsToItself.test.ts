import { describe, expect, it } from "vitest";
import { answerDate, cell, dayOf, drawn, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

// The policy that would stop it from doing otherwise: csp.test.ts.
describe("the page keeps to itself", () => {
  const served = servedPage();

  it("asks only its own address for files, and says nothing on the console", async () => {
    const notebook = await served.open();
    const { page, requests, troubles } = notebook;
    await drawn(page);
    await cell(page, "Building permit decided: high, in working days").fill("80");
    await page.keyboard.press("Enter");
    await settled(page);
    expect(requests.length).toBeGreaterThan(4);
    expect(requests.filter((url) => !url.startsWith(served.built.address))).toEqual([]);
    expect(troubles).toEqual([]);
    await notebook.close();
  });

  it("opens and computes without a network once it has been opened", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    await settled(page);
    const before = await answerDate(page);
    await page.context().setOffline(true);
    await page.reload();
    await settled(page);
    expect(await answerDate(page)).toBe(before);
    await cell(page, "Building permit decided: high, in working days").fill("120");
    await page.keyboard.press("Enter");
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);
    expect(dayOf(await answerDate(page))).toBeGreaterThan(dayOf(before));
    await notebook.close();
  });

  // 50 ms: what the Long Tasks API of the W3C calls a long task (recalled from memory). Counted is the processor time
  // of each task of the page's own thread: wall time would count what other programs on the machine do.
  // How long exactly is for the benchmark (tests/bench/page.mjs): machines differ. Here only that the page never computes
  // an answer itself, which takes seconds.
  it("never holds the page with the computation while it loads and computes", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    await drawn(page);
    await served.browser.startTracing(page, { categories: ["toplevel", "devtools.timeline", "__metadata"] });
    await page.reload();
    await drawn(page);
    await cell(page, "Building permit decided: high, in working days").fill("120");
    await page.keyboard.press("Enter");
    await page.locator(".aside-line u").first().waitFor();
    await drawn(page);
    const tasks = pageTasks((await served.browser.stopTracing()).toString("utf8"));
    expect(tasks.length).toBeGreaterThan(100);
    expect(tasks.reduce((most, one) => (one > most ? one : most), 0)).toBeLessThanOrEqual(300);
    await notebook.close();
  });
});

interface TraceEvent {
  name: string;
  pid: number;
  tid: number;
  tdur?: number;
  args?: { name?: string };
}

/** Processor time in ms of every task of the main thread of every page in a trace. */
function pageTasks(trace: string): number[] {
  const { traceEvents }: { traceEvents: TraceEvent[] } = JSON.parse(trace);
  const threads = traceEvents
    .filter((one) => one.name === "thread_name" && one.args?.name === "CrRendererMain")
    .map((one) => `${one.pid} ${one.tid}`);
  return traceEvents.flatMap((one) =>
    /RunTask$/.test(one.name) && one.tdur !== undefined && threads.includes(`${one.pid} ${one.tid}`)
      ? [one.tdur / 1000]
      : [],
  );
}
