import type { Page } from "playwright-core";
import { cell, settled } from "./notebook.ts";

/** Puts words in the place of what an input says, by keyboard, ends with Enter, and waits for the answer. */
export async function typeOver(page: Page, label: string, words: string): Promise<void> {
  await cell(page, label).focus();
  await page.keyboard.press("Control+A");
  await page.keyboard.press("Delete");
  await page.keyboard.type(words);
  await page.keyboard.press("Enter");
  await settled(page);
}
