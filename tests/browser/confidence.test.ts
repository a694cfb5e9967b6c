import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { examplePlan } from "../contract/command/leeway.ts";
import { answerDate, answerSum, cell, dayOf, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const text = readFileSync(examplePlan, "utf8");
const planText = (page: Page) => page.locator("#plan-text").inputValue();
const onDates = (page: Page) => page.getByRole("slider", { name: "on the curve of finishes" });
const level = async (slider: Locator) => Number(await slider.getAttribute("aria-valuenow"));

async function ready(page: Page): Promise<Locator> {
  const slider = onDates(page);
  await slider.evaluate((element) => element.scrollIntoView({ block: "center" }));
  await page.locator("leeway-level-curve figure svg").nth(1).waitFor();
  await settled(page);
  return slider;
}

// A percentile is read off the curve by its definition, so what is read at a level is what a run at that level answers
// (plan format 1, "Answers": the same draws give the same values). Keys of a slider: WAI-ARIA 1.2, recalled from memory.
describe("the line at the committed level", () => {
  const served = servedPage();

  it("is pulled by the pointer: every sentence follows at once, the plan when it is let go, in one step", async () => {
    const { page, troubles, close } = await served.open();
    const slider = await ready(page);
    const before = { date: await answerDate(page), sum: await answerSum(page) };
    const box = await slider.boundingBox();
    if (box === null) throw new Error("The handle is not there.");
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
    const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x + 10, at.y - 4, { steps: 3 });
    await page.mouse.move(at.x + 35, at.y - 18, { steps: 6 });
    await page.locator("#commitment .levels", { hasText: "read off the curve" }).waitFor();

    const pulled = await level(slider);
    expect(pulled).toBeGreaterThan(80);
    const read = { date: await answerDate(page), sum: await answerSum(page) };
    expect(dayOf(read.date)).toBeGreaterThan(dayOf(before.date));
    expect(await page.locator(".sentence").textContent()).toContain(`${pulled}\u00a0% of futures`);
    expect(await page.locator(".bar-answer").textContent()).toContain("read off the curve");
    expect(await page.locator(".bar-answer").textContent()).toContain(read.sum);
    expect(await page.locator(".aside-line").textContent()).toContain("nothing has been run");
    expect(await planText(page)).toBe(text);

    await page.mouse.up();
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);
    expect(await planText(page)).toBe(text.replace(/confidence: [\d.]+/, `confidence: ${pulled / 100}`));
    expect({ date: await answerDate(page), sum: await answerSum(page) }).toEqual(read);
    expect(await level(slider)).toBe(pulled);

    await page.keyboard.press("Control+Z");
    await settled(page);
    expect(await planText(page)).toBe(text);
    expect({ date: await answerDate(page), sum: await answerSum(page) }).toEqual(before);
    expect(troubles).toEqual([]);
    await close();
  });

  it("moves with the keys, on both curves, and Escape goes back", async () => {
    const { page, troubles, close } = await served.open();
    const slider = await ready(page);
    await slider.focus();
    const keys = [
      "ArrowUp",
      "ArrowRight",
      "ArrowDown",
      "PageUp",
      "PageDown",
      "PageDown",
      "Home",
      "End",
      "Escape",
    ];
    // All at once: on a busy machine the pauses between pressed keys would count as rests.
    const levels = await slider.evaluate(async (element, keys) => {
      const seen: number[] = [];
      for (const key of keys) {
        element.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
        await new Promise((next) => requestAnimationFrame(next));
        seen.push(Number(element.getAttribute("aria-valuenow")));
      }
      return seen;
    }, keys);
    expect(levels).toEqual([81, 82, 81, 86, 81, 76, 50, 95, 80]);
    await page.waitForTimeout(1500);
    expect(await planText(page)).toBe(text);

    // Several keys, one step: the level is kept once they rest.
    await slider.evaluate((element) => {
      for (const key of ["PageDown", "PageDown", "ArrowDown"])
        element.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true }));
    });
    await page.keyboard.press("Enter");
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);
    expect(await planText(page)).toContain("confidence: 0.69");
    expect(await slider.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press("Control+Z");
    await settled(page);
    expect(await planText(page)).toBe(text);
    expect(troubles).toEqual([]);
    await close();
  });

  it("can be left alone: the level is a number under Commitment too", async () => {
    const { page, close } = await served.open();
    const slider = await ready(page);
    await cell(page, "Level committed to, % of futures").fill("65");
    await page.keyboard.press("Enter");
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);
    expect(await level(slider)).toBe(65);
    await close();
  });

  it("does not move while the plan text has problems", async () => {
    const { page, close } = await served.open();
    const slider = await ready(page);
    await page.locator("#plan-text").fill(`${text}\nnonsense: 1\n`);
    await page.locator(".problems .error").first().waitFor();
    await slider.waitFor({ state: "detached" });
    await close();
  });
});
