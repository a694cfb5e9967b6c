import type { Locator, Page } from "playwright-core";
import { cell, drawn, settled } from "./notebook.ts";

/**
 * Walks every chapter of the job once, as a reader would: reads, edits, undoes, keeps, saves, hands over, pins, compares,
 * goes over to another example and begins a plan of their own. Each step waits for what it should bring about.
 *
 * @param page  On its opening plan.
 * @returns names of the files that were handed to the reader.
 */
export async function walk(page: Page): Promise<string[]> {
  const files: string[] = [];
  const taken = async (button: Locator): Promise<void> => {
    const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
    await download.path();
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
  await drawn(page);
  // Few futures: the way is what counts here.
  await page.locator("#plan-text").fill(`${await page.locator("#plan-text").inputValue()}\niterations: 400\n`);
  await page.locator("#plan-text").evaluate((area) => area.blur());
  await drawn(page);

  // The answer, and each section that is worked out while it is in sight.
  for (const section of ["contingency", "responses", "level", "money", "reach", "one-future"]) {
    await reach(page, `#${section} figure, #${section} .levels, #${section} table`);
  }

  // The plan: estimates, register, commitment; an entry that is wrong; undo and redo; the text.
  await enter("Building permit decided: high, in working days", "80");
  await enter("Building permit decided: high, in working days", "no number");
  await page.keyboard.press("Control+Z");
  await enter("Level committed to, % of futures", "75");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await settled(page);
  await page.getByRole("button", { name: "Redo", exact: true }).click();
  await settled(page);
  await page.locator("#register input[type=checkbox]").first().click();
  await settled(page);
  await page.locator("#work [data-adds]").first().click();
  await page.keyboard.press("Escape");
  await page.locator("#plan-text").fill(`${await page.locator("#plan-text").inputValue()}\nnonsense: 1\n`);
  await page.locator(".problems .error").first().waitFor();
  await page.locator(".line-button").first().click();
  await page.locator("#plan-text").evaluate((area) => area.blur());
  await page.keyboard.press("Control+Z");
  await settled(page);

  // Versions: pin one, move, compare with it.
  await page.getByLabel("Name this version").fill("As agreed");
  await page.getByRole("button", { name: "Pin it" }).click();
  await page.locator(".versions", { hasText: "As agreed" }).waitFor();
  await enter("Building permit decided: high, in working days", "120");
  await page
    .getByRole("button", { name: /^Compare.*As agreed/ })
    .click()
    .catch(() => {});
  await reach(page, "#changes leeway-figure figure");

  // Handing over: the file, every chart both ways, every document and table.
  await taken(page.getByRole("button", { name: "Save", exact: true }));
  const first = page.locator("#futures leeway-figure").first();
  await taken(first.getByRole("button", { name: /Save as SVG/ }));
  await taken(first.getByRole("button", { name: /PNG/ }));
  const hand = page.locator("leeway-hand-over");
  await reach(page, "leeway-hand-over");
  await hand.getByRole("button", { name: "Save as one page", disabled: false }).waitFor({ timeout: 100_000 });
  for (const button of await hand.getByRole("button").all()) await taken(button);
  await hand.locator("summary").click();
  await hand.locator(".sheet").waitFor();
  await hand.locator("select").selectOption({ index: 1 });
  await taken(hand.getByRole("button", { name: /Save as HTML/ }));

  // Another example, a file of one's own, a plan from five answers.
  await page.locator(".begin summary").click();
  await page
    .locator(".begin")
    .getByRole("button", { name: /^Open:/ })
    .last()
    .click();
  await page.locator("h1", { hasText: /ferry/i }).waitFor();
  await settled(page);
  const choosing = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open …" }).click();
  await (await choosing).setFiles({
    name: "shed.plan.yaml",
    mimeType: "application/yaml",
    buffer: Buffer.from(shed),
  });
  await page.locator("h1", { hasText: "Shed roof" }).waitFor();
  await settled(page);
  return files;
}

const shed = `format: 1
title: Shed roof
start: 2027-02-01
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 3, 6] }
`;

/** Comes into sight of something that is worked out only there: what stands above may still grow. */
async function reach(page: Page, selector: string): Promise<void> {
  const wanted = page.locator(selector).first();
  const section = `#${/^#?([\w-]+)/.exec(selector)?.[1]}`;
  const until = Date.now() + 90_000;
  while (Date.now() < until) {
    await page
      .locator(section.replace("#leeway-hand-over", "#hand-over"))
      .evaluate((one) => one.scrollIntoView());
    const there = await wanted.waitFor({ timeout: 1500 }).then(
      () => true,
      () => false,
    );
    if (there) return;
  }
  throw new Error(`${selector} never came.`);
}
