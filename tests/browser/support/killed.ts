import { type Killable, startKillable } from "./killable.ts";
import { cell } from "./notebook.ts";

export interface Killings {
  /** What came back older than what had been kept. */
  lost: string[];
  /** What came back as no plan that was ever typed. */
  torn: string[];
  /** Ms before its end at which the browser was given the oldest entry that did not come back, one for each time. */
  ages: number[];
}

const shed = (high: number) => `format: 1
title: Shed roof
start: 2027-02-01
iterations: 100
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 3, ${high}] }
`;
const strip = "Strip the old roof: high, in working days";
/** Ms between entries, and the longest that a browser lives on after the first. */
const pause = 120;
const longest = 1500;

/** Kills the browser in the middle of entries, `times` over, on one profile, and looks at what comes back each time. */
export async function killed(address: string, profile: string, times: number): Promise<Killings> {
  const found: Killings = { lost: [], torn: [], ages: [] };
  let high = 10;
  let entries: { high: number; at: number }[] = [];
  let kept = 0;
  let end = 0;
  for (let time = 0; time <= times; time++) {
    const one = await startKillable(profile);
    try {
      const page = await pageOf(one);
      await page.exposeFunction("wasKept", (text: string) => {
        kept = Math.max(kept, highOf(text) ?? 0);
      });
      await page.addInitScript(watchKeeping);
      await page.goto(address);
      await page.locator("#plan-text").waitFor();
      if (time === 0) {
        await page.locator("#plan-text").fill(shed(high));
        await page.locator("#safety", { hasText: /^\s*Kept in this browser/ }).waitFor();
      } else {
        const text = await page.locator("#plan-text").inputValue();
        const back = highOf(text);
        const what = `time ${time}: ${back} of ${entries.map((entry) => entry.high).join(" ")}, kept ${kept}`;
        if (back === undefined || text !== shed(back)) found.torn.push(`${what}: ${JSON.stringify(text)}`);
        else if (back < kept) found.lost.push(what);
        if (back === undefined) break;
        const missing = entries.find((entry) => entry.high > back);
        if (missing !== undefined) found.ages.push(Math.round(end - missing.at));
      }
      await cell(page, strip).waitFor();
      entries = [];
      const until = performance.now() + ((time * 617) % longest);
      do {
        high++;
        await cell(page, strip).fill(String(high));
        entries.push({ high, at: performance.now() });
        await cell(page, strip).press("Enter");
        await page.waitForTimeout(pause);
      } while (performance.now() < until);
      end = performance.now();
    } finally {
      await one.kill();
    }
  }
  return found;
}

function highOf(text: string): number | undefined {
  const high = /duration: \[2, 3, (\d+)\]/.exec(text)?.[1];
  return high === undefined ? undefined : Number(high);
}

async function pageOf({ browser }: Killable) {
  const [context] = browser.contexts();
  if (context === undefined) throw new Error("Chromium has no window.");
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  return page;
}

/** In the page: tells of every plan whose transaction was completed. */
function watchKeeping(): void {
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (
    this: IDBObjectStore,
    value: { text?: string },
    key?: IDBValidKey,
  ) {
    const told: unknown = Reflect.get(window, "wasKept");
    const { text } = value;
    if (text !== undefined && typeof told === "function")
      this.transaction.addEventListener("complete", () => told(text));
    return put.call(this, value, key);
  };
}
