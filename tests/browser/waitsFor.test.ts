import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";
import { withoutFieldSizing } from "./support/withoutFieldSizing.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };
const long =
  "Hand the shed over to the harbour office, with its keys, its tide table and the books of the last three years";
const plan = smallPlan.replace(
  "risks:",
  `  - { id: hand, name: "${long}", phase: Roof, duration: [1, 2, 3], people: [ann, bo], after: [tiles, frame, pour] }
  - { id: party, name: Open the doors, phase: Roof, duration: 1, people: [ann, bo], after: hand }
risks:`,
);
const waits = (name: string): string => `${name}: waits for these tasks, by name or id`;

// A reader knows tasks by their names. Common practice, no source.
describe("what a task waits for", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
  });

  it.each([1280, 800, 390])("is shown by names that are read whole: %i px", async (width) => {
    const { page } = notebook;
    await page.setViewportSize({ width, height: 900 });
    await fillPlan(page, plan);
    const texts = await page.locator("#work tr[data-item] .after .field").evaluateAll((all) =>
      all.map((one) => {
        if (!(one instanceof HTMLTextAreaElement)) return "no text in lines";
        const whole = one.scrollWidth <= one.clientWidth + 1 && one.scrollHeight <= one.clientHeight + 1;
        return whole ? one.value : `cut: ${one.value}`;
      }),
    );
    expect(texts).toEqual([
      "",
      "Dig the trench",
      "Pour the floor",
      "Raise the frame",
      "Lay the tiles; Raise the frame; Pour the floor",
      long,
    ]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(await violations(page, "#work")).toEqual([]);
  });

  it.each([1280, 390])("is read whole too where fields have one size: %i px", async (width) => {
    const context = await served.browser.newContext({ viewport: { width, height: 900 } });
    await withoutFieldSizing(context);
    const page = await context.newPage();
    await page.goto(served.built.address);
    await settled(page);
    await fillPlan(page, plan);
    const cut = await page
      .locator("#work tr[data-item] .after .wraps")
      .evaluateAll((all) =>
        all.map((one) => Math.max(one.scrollWidth - one.clientWidth, one.scrollHeight - one.clientHeight)),
      );
    expect(cut).toHaveLength(6);
    expect(Math.max(...cut)).toBeLessThanOrEqual(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await context.close();
  });

  it.each([1280, 390])("takes names and ids, and stores ids: %i px", async (width) => {
    // A page of its own: one behind others gets few frames, and its text is drawn late.
    const { page, troubles, close } = await served.open({ viewport: { width, height: 900 } });
    await fillPlan(page, plan);
    const after = async (at: number) => parse(await page.locator("#plan-text").inputValue()).tasks[at].after;
    const links = cell(page, waits("Lay the tiles"));
    await links.fill("pour, Dig the trench");
    await links.press("Enter");
    await expect.poll(() => after(3), slow).toEqual(["pour", "dig"]);
    await expect.poll(() => links.inputValue(), slow).toBe("Pour the floor; Dig the trench");
    // Enter went to the cell below; a name is picked from those suggested and put in as a name.
    await links.focus();
    await page.keyboard.press("End");
    await page.keyboard.type("; raise");
    await page.getByRole("option", { name: "Raise the frame" }).waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect.poll(() => links.inputValue()).toBe("Pour the floor; Dig the trench; Raise the frame");
    await expect.poll(() => after(3), slow).toEqual(["pour", "dig", "frame"]);
    // In the last row Enter takes the entry in, once, and goes on to a new row.
    const last = cell(page, waits("Open the doors"));
    await last.fill("frame");
    await last.press("Enter");
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe("New task: name");
    await expect.poll(() => after(5), slow).toEqual(["frame"]);
    await page.keyboard.press("Escape");
    await settled(page);
    await page.keyboard.press("Control+Z");
    await expect.poll(() => after(5), slow).toBe("hand");
    expect(troubles).toEqual([]);
    await close();
  });
});
