import { readPlan } from "@leeway/core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { createAsker } from "../../apps/notebook/src/asking/asker.ts";
import type { AskRequest } from "../../apps/notebook/src/asking/questions.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

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
      await page.locator("leeway-changes:not(:has(.settling))").waitFor();
      await settled(page);
      expect(await strayed(page)).toBeLessThan(4);
      // Where the answer above it comes.
      await stay(page, "#sign-off");
      await page.locator("leeway-one-future[answered]:not(:has(.settling))").waitFor();
      await settled(page);
      expect(await strayed(page)).toBeLessThan(4);
    }
    const told = await page.evaluate(() => Reflect.get(window, "told"));
    expect(Array.isArray(told) && told.length <= 2).toBe(true);
    expect(troubles).toEqual([]);
    await close();
  });
});

/** Below the heading of a section: where its first words begin, and what its status covers or is covered by. */
function belowHeading(page: Page, id: string): Promise<{ words: number; over: string[] }> {
  return page.locator(`#${id}`).evaluate((section) => {
    section.scrollIntoView({ block: "start", behavior: "instant" });
    const box = (one: Element | null): DOMRect => {
      if (one === null) throw new Error(`something is missing in ${section.id}`);
      return one.getBoundingClientRect();
    };
    const heading = section.querySelector("h2");
    const first = section.querySelector(".asking-line + *") ?? section.querySelector(".fold-body .note");
    const status = section.querySelector(".asking");
    const over: string[] = [];
    for (const other of [section.querySelector(".fold"), first]) {
      if (status === null || other === null) continue;
      const [a, b] = [box(status), box(other)];
      if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        over.push(other.className);
    }
    for (const press of section.querySelectorAll(".fold, .asking button")) {
      const { left, top, width, height } = box(press);
      if (!press.contains(document.elementFromPoint(left + width / 2, top + height / 2)))
        over.push(`nobody can press ${press.textContent}`);
    }
    return { words: box(first).top - box(heading).bottom, over };
  });
}

describe("how far a question is", () => {
  const served = servedPage();

  it("stands beside the heading: first words stay, as close below it as elsewhere, and all can be pressed", async () => {
    const { page, troubles, close } = await served.open();
    const ids = ["contingency", "level", "money", "reach", "changes"];
    const widths = [1280, 704, 390, 320];
    const at = async (width: number): Promise<void> => {
      await page.setViewportSize({ width, height: 900 });
      await settled(page);
    };
    /** By section and width. */
    const look = async (): Promise<Map<string, number>> => {
      const found = new Map<string, number>();
      for (const width of widths) {
        await at(width);
        for (const id of ids) {
          const { words, over } = await belowHeading(page, id);
          expect(over, `${id} at ${width} px`).toEqual([]);
          found.set(`${id} at ${width} px`, words);
        }
      }
      return found;
    };
    await fillPlan(page, smallPlan);
    for (const id of ids) {
      await page.locator(`#${id}`).evaluate((section) => section.scrollIntoView());
      await page.locator(`leeway-${id}[answered]:not(:has(.asking))`).waitFor();
    }
    const still = await look();
    for (const width of widths) {
      await at(width);
      const { words: elsewhere } = await belowHeading(page, "work");
      for (const id of ids)
        expect(still.get(`${id} at ${width} px`), `${id} at ${width} px`).toBeLessThan(
          elsewhere + (width > 700 ? 2 : width > 384 ? 20 : 37),
        );
    }

    // Stopped as soon as it is under way: what is said then stays.
    await at(1280);
    await page.evaluate((sections) => {
      const under: Record<string, number> = {};
      Reflect.set(window, "under", under);
      new MutationObserver(() => {
        for (const id of sections) {
          const section = document.querySelector(`#${id}`);
          const stop = section?.querySelector<HTMLElement>(
            ".asking progress ~ button, .asking label + button",
          );
          const first = section?.querySelector(".asking-line + *");
          if (!stop || !first || under[id] !== undefined) continue;
          const heading = section?.querySelector("h2")?.getBoundingClientRect().bottom ?? Number.NaN;
          under[id] = first.getBoundingClientRect().top - heading;
          stop.click();
        }
      }).observe(document.body, { subtree: true, childList: true });
    }, ids);
    await page.locator("#plan-text").fill(smallPlan.replace("iterations: 2048", "iterations: 200000"));
    await page.locator("#plan-text").blur();
    for (const id of ids) {
      await page.locator(`#${id}`).evaluate((section) => section.scrollIntoView());
      await page
        .locator(`#${id} .asking`, { hasText: "before your last change" })
        .getByRole("button")
        .waitFor();
      expect(await page.evaluate((one) => Reflect.get(window, "under")[one], id)).toBeCloseTo(
        still.get(`${id} at 1280 px`) ?? Number.NaN,
        0,
      );
    }
    const said = await look();
    for (const [where, words] of still) expect(said.get(where), where).toBeCloseTo(words, 0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    for (const id of ids) expect(await violations(page, `#${id}`)).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});

describe("the line that stays", () => {
  const served = servedPage();

  it("keeps date and sum whole and in place, computing, stopped or answered, on a telephone", async () => {
    const { page, troubles, close } = await served.open();
    const narrow = [390, 320];
    /** Where date and sum stand, and what of them is cut or covered. */
    const look = (): Promise<{ at: number[]; lost: string[] }> =>
      page.evaluate(() => {
        const line = document.querySelector(".bar-answer");
        const parts = [...document.querySelectorAll(".bar-answer > :is(.date, .sum)")];
        const lost: string[] = [];
        if (line === null || parts.length !== 2) return { at: [], lost: ["they are missing"] };
        for (const part of parts) {
          const { left, right, top, bottom } = part.getBoundingClientRect();
          if (right > line.getBoundingClientRect().right) lost.push(`${part.className} is cut`);
          for (const x of [left + 1, right - 1])
            if (!line.contains(document.elementFromPoint(x, (top + bottom) / 2)))
              lost.push(`${part.className} is covered`);
        }
        for (const press of document.querySelectorAll(".bar :is(button, a)")) {
          const { left, top, width, height } = press.getBoundingClientRect();
          if (Math.min(width, height) < 24) lost.push(`${press.textContent} is small`);
          if (!press.contains(document.elementFromPoint(left + width / 2, top + height / 2)))
            lost.push(`nobody can press ${press.textContent}`);
        }
        return {
          at: parts.flatMap((part) => [
            part.getBoundingClientRect().left,
            part.getBoundingClientRect().top,
            part.getBoundingClientRect().height,
          ]),
          lost,
        };
      });
    const put = async (text: string): Promise<void> => {
      await page.locator("#plan-text").fill(text);
      await page.locator("#plan-text").blur();
    };
    await fillPlan(page, smallPlan);
    for (const width of narrow) {
      await page.setViewportSize({ width, height: 844 });
      await page.locator("#work").evaluate((section) => section.scrollIntoView());
      await page.locator(".bar-answer:not(.away)").waitFor();
      const still = await look();
      expect(still.lost, `${width} px`).toEqual([]);
      await put(smallPlan.replace("iterations: 2048", "iterations: 900000"));
      const stop = page.locator(".bar-progress button", { hasText: "Stop" });
      await stop.waitFor();
      await page.locator("#work").evaluate((section) => section.scrollIntoView());
      expect(await look(), `computing at ${width} px`).toEqual(still);
      await stop.click();
      await page.locator(".bar .stale-mark").waitFor();
      expect(await look(), `stopped at ${width} px`).toEqual(still);
      await put(smallPlan);
      await settled(page);
    }
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
