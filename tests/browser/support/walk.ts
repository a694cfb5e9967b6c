import type { Locator, Page } from "playwright-core";
import { cell, drawn, settled } from "./notebook.ts";

/** Something for every chapter, and soon worked out. */
const plan = `format: 1
title: Shed roof
start: 2027-02-01
iterations: 400
commitment: { confidence: 0.8, finishBy: 2027-02-20, budget: 4000 }
people: [{ id: ann, name: Ann, rate: 100 }]
approvals: [{ who: ann, decision: pending }]
risks:
  - id: rain
    name: Rain
    probability: 0.3
    impacts: [{ tasks: strip, delay: [1, 2, 5] }]
    responses: [{ id: sheet, action: Rent a sheet, cost: 90, probability: 0.1 }]
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 3, 6], people: ann }
  - { id: lay, name: Lay the new one, duration: [3, 4, 9], people: ann, after: strip }
`;
const strip = "Strip the old roof: high, in working days";
const patience = 90_000;

/**
 * Walks every chapter of the job once, as a reader would: reads, edits, undoes, keeps, saves, hands over, pins, compares,
 * goes over to another example and opens a file. Each step waits for what it should bring about.
 *
 * @param page  On its opening plan.
 * @returns names of the files that were handed to the reader.
 */
export async function walk(page: Page): Promise<string[]> {
  page.setDefaultTimeout(patience);
  const files: string[] = [];
  const taken = async (button: Locator): Promise<void> => {
    const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
    files.push(download.suggestedFilename());
  };
  const enter = async (label: string, text: string): Promise<void> => {
    await cell(page, label).fill(text);
    await cell(page, label).press("Enter");
    await settled(page);
  };
  await page.evaluate(() => {
    // As in a browser that hands no files to pages: what is opened and saved can then be watched.
    for (const name of ["showOpenFilePicker", "showSaveFilePicker"]) Reflect.deleteProperty(window, name);
  });
  // Another example, then a file of one's own.
  await page.locator(".begin summary").click();
  await page
    .locator(".begin")
    .getByRole("button", { name: /^Open:/ })
    .last()
    .click();
  await page.locator("h1:not(:has-text('Quillmarsh'))").waitFor();
  const choosing = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open …" }).click();
  await (await choosing).setFiles({
    name: "shed.plan.yaml",
    mimeType: "application/yaml",
    buffer: Buffer.from(plan),
  });
  await page.locator("h1", { hasText: "Shed roof" }).waitFor();
  await drawn(page);

  // Each section that is worked out while it is in sight.
  await reach(page, "contingency", "figure");
  await reach(page, "responses", "figure");
  await reach(page, "level", ".levels, table, figure");
  await reach(page, "money", "figure, table");
  await reach(page, "reach", ".finding");
  await reach(page, "one-future", "figure");

  // The plan: estimates, commitment, register; an entry that is wrong; undo and redo; the text.
  await enter(strip, "8");
  await enter(strip, "no number");
  await page.locator("#work .waits").first().waitFor();
  await page.keyboard.press("Control+Z");
  await enter("Level committed to, % of futures", "75");
  for (const name of ["Undo", "Redo"]) {
    await page.getByRole("button", { name, exact: true }).click();
    await settled(page);
  }
  await page.locator("#register input[type=checkbox]").first().click();
  await settled(page);
  await page.locator("#work [data-adds]").first().click();
  await page.keyboard.press("Escape");
  const text = await page.locator("#plan-text").inputValue();
  await page.locator("#plan-text").fill(`${text}\nnonsense: 1\n`);
  await page.locator(".problems .error").first().waitFor();
  await page.locator(".line-button").first().click();
  await page.locator("#plan-text").fill(text);
  await page.locator(".problems .error").first().waitFor({ state: "detached" });
  await settled(page);

  // Versions: pin one, move, see what moved.
  await page.getByLabel("Name this version").fill("As agreed");
  await page.getByRole("button", { name: "Pin it" }).click();
  await page.locator(".versions", { hasText: "As agreed" }).waitFor();
  await enter(strip, "20");
  await reach(page, "changes", "leeway-figure figure");

  // Handing over: the file, a chart both ways, every document and table.
  await taken(page.getByRole("button", { name: "Save", exact: true }));
  const chart = page.locator("#futures leeway-figure").first();
  await taken(chart.getByRole("button", { name: "Save as SVG" }));
  await taken(chart.getByRole("button", { name: "PNG" }));
  const hand = page.locator("leeway-hand-over");
  await reach(page, "hand-over", "button:text('Save as one page'):not([disabled])");
  for (const button of await hand.getByRole("button").all()) await taken(button);
  await hand.locator("select").selectOption({ index: 1 });
  await taken(hand.getByRole("button", { name: "Save as HTML" }));
  await hand.locator("summary").click();
  await hand.locator(".sheet").waitFor();
  return files;
}

/** Comes into sight of something that is worked out only there: what stands above it may still grow. */
async function reach(page: Page, section: string, selector: string): Promise<void> {
  const room = page.locator(`#${section}`);
  const wanted = room.locator(selector).first();
  for (const until = Date.now() + patience; Date.now() < until; ) {
    await room.evaluate((one) => one.scrollIntoView());
    const there = await wanted.waitFor({ timeout: 2000 }).then(
      () => true,
      () => false,
    );
    if (there) return;
  }
  throw new Error(`${selector} of ${section} never came.`);
}
