import type { Page } from "playwright-core";
import { settled } from "./notebook.ts";

/** The plan's text as it stands on the page, once all that was entered is in it. */
export async function planText(page: Page): Promise<string> {
  await settled(page);
  return page.locator("#plan-text").inputValue();
}
