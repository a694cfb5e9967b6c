import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { answerDate, cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 30_000 };

async function again(page: Page): Promise<void> {
  await page.reload();
  await settled(page);
}

// Nothing a reader typed may be lost, and nothing unfinished may become a number of the plan: the project's own rules,
// common practice, no source.
describe("what is half typed when the page goes away", () => {
  const served = servedPage();

  it("waits at its field after a reload, out of the plan, until it is taken in or given up", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, smallPlan);
    await page.locator("#safety", { hasText: /^\s*Kept in this browser/ }).waitFor();
    const date = await answerDate(page);
    const text = await page.locator("#plan-text").inputValue();
    const field = cell(page, "Dig the trench: high, in working days");
    const was = await field.inputValue();
    await field.fill("90");
    await again(page);
    const message = page.locator(".message", { hasText: "still typing this" });
    await message.waitFor(slow);
    expect(await field.inputValue()).toBe("90");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(await page.locator("#plan-text").inputValue()).toBe(text);
    expect(await answerDate(page)).toBe(date);
    expect(await page.evaluate(() => document.activeElement === document.body)).toBe(true);
    // It is kept on, until the reader decides.
    await again(page);
    await message.waitFor(slow);
    await field.press("Escape");
    await message.waitFor({ state: "detached", ...slow });
    expect(await field.inputValue()).toBe(was);
    await field.fill("91");
    await again(page);
    await message.waitFor(slow);
    await field.press("Enter");
    await message.waitFor({ state: "detached", ...slow });
    await settled(page);
    expect(await page.locator("#plan-text").inputValue()).toContain("91");
    await again(page);
    await page.waitForTimeout(500);
    expect(await message.count()).toBe(0);
    expect(await page.evaluate(() => sessionStorage.length)).toBe(0);
    await close();
  });

  it("is what could not be taken in as well, with its own reason", async () => {
    const { page, close } = await served.open();
    const field = cell(page, "Building permit decided: high, in working days");
    await field.fill("many");
    await field.press("Enter");
    const message = page.locator("#work .message");
    await message.waitFor(slow);
    const words = await message.textContent();
    await again(page);
    await message.waitFor(slow);
    expect(await message.textContent()).toBe(words);
    expect(await field.inputValue()).toBe("many");
    await close();
  });

  it.each([
    ["#work [data-adds]", "New task: name", "New task: low, in working days"],
    [
      "[data-adds=assumptions]",
      "New assumption: what the plan counts on",
      "New assumption: delay: low, in working days",
    ],
    ["[data-adds=people]", "New person: name", undefined],
  ])("is a row that was begun by %s, and stays out of the plan", async (opens, name, more) => {
    const { page, close } = await served.open();
    const text = await page.locator("#plan-text").inputValue();
    await page.locator(opens).last().click();
    await cell(page, name).fill("Half a name");
    if (more !== undefined) await cell(page, more).fill("3");
    await again(page);
    await cell(page, name).waitFor(slow);
    expect(await cell(page, name).inputValue()).toBe("Half a name");
    if (more !== undefined) expect(await cell(page, more).inputValue()).toBe("3");
    await page.waitForTimeout(400);
    expect(await page.locator("#plan-text").inputValue()).toBe(text);
    await cell(page, name).press("Escape");
    await again(page);
    await page.waitForTimeout(500);
    expect(await cell(page, name).count()).toBe(0);
    await close();
  });

  it("is the form of a plan of one's own, open as it was, until the plan is made", async () => {
    const { page, close } = await served.open();
    await page.locator(".begin summary").click();
    const title = page.locator("form.own [name=title]");
    await title.fill("A new roof");
    await page.locator("form.own [name=strand-1-name]").fill("Strip the old one");
    await page.locator("form.own [name=worry-1-name]").fill("Rain");
    await again(page);
    await expect.poll(() => title.inputValue()).toBe("A new roof");
    expect(await title.isVisible()).toBe(true);
    expect(await page.locator("form.own [name=worry-1-name]").inputValue()).toBe("Rain");
    await page.locator("form.own [name=worry-1-name]").fill("");
    for (const [part, days] of [
      ["low", "1"],
      ["likely", "2"],
      ["high", "4"],
    ])
      await page.locator(`form.own [name=strand-1-${part}]`).fill(days ?? "");
    await page.getByRole("button", { name: "Make the plan" }).click();
    await page.locator("h1", { hasText: "A new roof" }).waitFor(slow);
    await again(page);
    await page.waitForTimeout(500);
    expect(await title.inputValue()).toBe("");
    await close();
  });

  it("is lost where the browser stores nothing, and no more than that", async () => {
    const { page, troubles, close } = await served.open({}, () => {
      for (const name of ["sessionStorage", "localStorage"])
        Object.defineProperty(window, name, {
          get: () => {
            throw new DOMException("refused", "SecurityError");
          },
        });
    });
    await page.locator(".begin summary").click();
    await page.locator("form.own [name=title]").fill("A new roof");
    await page.waitForTimeout(400);
    expect(await page.locator("form.own [name=title]").inputValue()).toBe("A new roof");
    expect(troubles).toEqual([]);
    await close();
  });
});
