import type { Page } from "playwright-core";
import { cell } from "./notebook.ts";

/** Puts words in the place of what an input says, by keyboard, and ends with Enter. Edits are made in turn: none has to be waited for. */
export async function typeOver(page: Page, label: string, words: string): Promise<void> {
  await cell(page, label).focus();
  await page.keyboard.press("Control+A");
  await page.keyboard.press("Delete");
  await page.keyboard.type(words);
  await page.keyboard.press("Enter");
}
