import type { Page } from "playwright-core";
import { settled } from "./notebook.ts";

/** Puts another plan into the text of the page, and waits for its answer. */
export async function fillPlan(page: Page, text: string): Promise<void> {
  const [, title] = /^title: (.*)$/m.exec(text) ?? [];
  if (title === undefined) throw new Error("The plan has no title to wait for.");
  await page.locator("#plan-text").fill(text);
  await page.locator("#plan-text").blur();
  await page.locator("h1", { hasText: title }).waitFor();
  await settled(page);
}
