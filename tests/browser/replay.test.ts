import { readFileSync } from "node:fs";
import { formatDate, groupDigits } from "@leeway/charts";
import { type Future, future, readPlan, type WhichFuture } from "@leeway/core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { examplePlan } from "../contract/command/leeway.ts";
import { cell, drawn, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

const { plan } = readPlan(readFileSync(examplePlan, "utf8"));

function known(which: WhichFuture): Future {
  if (plan === undefined) throw new Error("The example cannot be read.");
  const found = future(plan, which).future;
  if (found === undefined) throw new Error("There is no such future.");
  return found;
}

/** Waits for a future in the section, and says what it shows of it. */
async function shown(page: Page, { iteration }: Future) {
  const section = page.locator("#one-future");
  await section
    .locator(".figure-subtitle", { hasText: `Future ${groupDigits(iteration)} of 10,000` })
    .waitFor({ timeout: 60_000 });
  await settled(page);
  const texts = async (selector: string) =>
    (await section.locator(selector).allTextContents()).map((text) => text.trim());
  return {
    title: ((await section.locator(".figure-title").textContent()) ?? "").replaceAll("\u00a0", " "),
    path: await texts(".path li"),
    total: (await texts(".told tr.committed td"))[0],
    events: await section.locator(".told .levels").first().locator("tbody tr").count(),
  };
}

// The page replays the very future that the library replays here, in Node, on the same document and seed: what is drawn
// depends on nothing else (plan format 1, "Same plan, seed and iterations: same numbers, to the bit").
describe("one future, replayed", () => {
  const served = servedPage();
  async function open(width = 1280) {
    const notebook = await served.open({ viewport: { width, height: 900 } });
    await drawn(notebook.page);
    await notebook.page.locator("#one-future").scrollIntoViewIfNeeded();
    return notebook;
  }

  it("shows the future at the committed level, then the next, one by its number, one by the slider", async () => {
    const { page, troubles, close } = await open();
    const check = async (expected: Future) => {
      const seen = await shown(page, expected);
      expect(seen.title).toContain(formatDate(expected.finish.date, "weekday"));
      expect(seen.path.map((text) => text.split(",")[0])).toEqual(
        expected.path.map(({ task }) => task.name.split(",")[0]),
      );
      expect(seen.total).toBe(groupDigits(Math.round(expected.cost.total)));
      const occurred = expected.events.filter((event) => event.occurred).length;
      if (occurred > 0) expect(seen.events).toBe(occurred);
    };
    const first = known({ at: 0.8 });
    await check(first);
    await page.getByRole("button", { name: "Next future" }).click();
    await check(known({ iteration: first.iteration + 1 }));
    await page.getByRole("button", { name: "Previous future" }).click();
    await check(first);

    await cell(page, "Number of the future, 1 to 10,000").fill("17");
    await page.keyboard.press("Enter");
    await check(known({ iteration: 17 }));

    const slider = page.locator("#one-future input[type=range]");
    await slider.focus();
    await slider.evaluate((element) => {
      if (element instanceof HTMLInputElement) element.value = "95";
      element.dispatchEvent(new Event("input", { bubbles: true }));
    });
    await check(known({ at: 0.95 }));
    await page.keyboard.press("ArrowLeft");
    await check(known({ at: 0.94 }));
    expect(troubles).toEqual([]);
    await close();
  });

  it("says why a number is no future, and keeps the one it has", async () => {
    const { page, close } = await open();
    const first = known({ at: 0.8 });
    await shown(page, first);
    const number = cell(page, "Number of the future, 1 to 10,000");
    await number.fill("10,001");
    await page.keyboard.press("Enter");
    await page.locator("#message-future", { hasText: "counted from 1" }).waitFor();
    expect(await number.getAttribute("aria-invalid")).toBe("true");
    await page.keyboard.press("Escape");
    await page.locator("#message-future").waitFor({ state: "detached" });
    expect(await number.inputValue()).toBe(groupDigits(first.iteration));
    await close();
  });

  it.each([1280, 390])(
    "has no violation at %i px, with the levels and the money in sight too",
    async (width) => {
      const { page, troubles, close } = await open(width);
      await shown(page, known({ at: 0.8 }));
      for (const id of ["level", "money"]) {
        await page.locator(`#${id}`).scrollIntoViewIfNeeded();
        await page.locator(`#${id} figure`).nth(1).waitFor({ timeout: 60_000 });
      }
      await settled(page);
      expect(await violations(page)).toEqual([]);
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBeLessThanOrEqual(0);
      expect(troubles).toEqual([]);
      await close();
    },
  );
});
