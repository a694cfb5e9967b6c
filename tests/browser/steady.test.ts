import { readPlan } from "@leeway/core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { createAsker } from "../../apps/notebook/src/asking/asker.ts";
import type { AskRequest } from "../../apps/notebook/src/asking/questions.ts";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

/** Scrolls to a section, and from then on notes how far its top strays, in px. */
async function stay(page: Page, section: string): Promise<void> {
  await page.evaluate(async (id) => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const at = document.querySelector(id);
    if (at === null) throw new Error(`no ${id}`);
    at.scrollIntoView();
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const first = at.getBoundingClientRect().top;
    const noted = { most: 0 };
    Reflect.set(window, "strayed", noted);
    const look = (): void => {
      if (Reflect.get(window, "strayed") !== noted) return; // another walk began
      noted.most = Math.max(noted.most, Math.abs(at.getBoundingClientRect().top - first));
      requestAnimationFrame(look);
    };
    look();
  }, section);
}

const strayed = (page: Page) => page.evaluate(() => Number(Reflect.get(window, "strayed").most));

// Rules of this project's own, common practice, no source: nothing the reader looks at moves because an answer comes.
describe("while answers come", () => {
  const served = servedPage();

  it("the section the reader is at stays where it is, and what is worth a look is told once a plan", async () => {
    const { page, troubles, close } = await served.open();
    const mark = page.locator('.outline a[href="#commitment"]');
    await mark.locator(".looks").waitFor();
    // The chance is the forecast's: that finding needs it.
    const unlikely = page.locator("#commitment .findings li", {
      hasText: /2027-10-01 is made in .* futures/,
    });
    await unlikely.waitFor({ state: "attached" });
    await mark.evaluate((link) => {
      const told: string[] = [];
      Reflect.set(window, "told", told);
      new MutationObserver(() => told.push(link.textContent ?? "")).observe(link, {
        subtree: true,
        childList: true,
        characterData: true,
      });
    });

    await cell(page, "Building permit decided: high, in working days").fill("60");
    await page.keyboard.press("Enter");
    await settled(page);
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      await stay(page, "#changes");
      // At 390 px the plan is another again: every answer near comes anew.
      if (width === 390) await page.keyboard.press("Control+Z");
      await page.locator("#changes .finding", { hasText: width === 1280 ? /moved/ : /./ }).waitFor();
      await page.locator("leeway-one-future[answered]:not(:has(.settling))").waitFor();
      await page.locator("leeway-changes:not(:has(.settling))").waitFor();
      await settled(page);
      expect(await strayed(page)).toBeLessThan(4);
    }
    const told = await page.evaluate(() => Reflect.get(window, "told"));
    expect(Array.isArray(told) && told.length <= 2).toBe(true);
    expect(troubles).toEqual([]);
    await close();
  });
});

describe("the asker", () => {
  it("looks for findings with the answer to that plan, and hands no other question the whole of it", async () => {
    const text = "format: 1\ntitle: T\nstart: 2027-01-04\ntasks: { id: dig, name: Dig, duration: 2 }\n";
    const { plan } = readPlan(text);
    if (plan === undefined) throw new Error("the plan of the test does not read");
    const asked: AskRequest[] = [];
    const asker = createAsker(() => {
      const worker = {
        onmessage: null as ((event: MessageEvent) => void) | null,
        onerror: null,
        terminate: () => {},
        postMessage(request: AskRequest) {
          asked.push(request);
          const reply = { kind: "answer", run: request.run, answer: undefined, problems: [] };
          queueMicrotask(() => worker.onmessage?.(new MessageEvent("message", { data: reply })));
        },
      };
      return worker;
    });
    const forecast = JSON.parse('{ "only": "its identity matters" }');
    asker.want({ kind: "findings", today: "2027-01-04" });
    asker.want({ kind: "budget" });
    asker.plan(plan, forecast);
    await expect.poll(() => asked.length).toBe(2);
    expect(asked.map((one) => [one.question.kind, one.forecast])).toEqual([
      ["findings", forecast],
      ["budget", undefined],
    ]);
  });
});
