import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";

/** The open notebook, and what went wrong in it. */
export interface Notebook {
  page: Page;
  /** Console errors, uncaught exceptions, failed requests, refusals of the content policy. */
  troubles: string[];
  /** Every address asked for. */
  requests: string[];
  close: () => Promise<void>;
}

/** Opens the page and waits for its full answer. `init` is run in the page before anything else. */
export async function openNotebook(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
  init?: () => void,
): Promise<Notebook> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const troubles: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") troubles.push(message.text());
  });
  page.on("pageerror", (error) => troubles.push(String(error)));
  context.on("request", (request) => requests.push(request.url()));
  context.on("requestfailed", (request) => troubles.push(`${request.url()} ${request.failure()?.errorText}`));
  if (init !== undefined) await page.addInitScript(init);
  await page.goto(address);
  await settled(page);
  return { page, troubles, requests, close: () => context.close() };
}

/** Waits until nothing is being read, computed or redrawn and the sentence is there. */
export async function settled(page: Page): Promise<void> {
  await page.locator(".sentence strong").first().waitFor();
  await page.locator('html:not([data-drawing]) main[data-busy="false"]').waitFor();
}

/** Waits until the charts have caught up too, the re-runs for the tornado included. */
export async function drawn(page: Page): Promise<void> {
  await settled(page);
  await page.locator("leeway-tornado figure").nth(1).waitFor();
  await page.locator(".tornado-status progress").waitFor({ state: "detached" });
}

export async function answerDate(page: Page): Promise<string> {
  return (await page.locator(".sentence .date").textContent()) ?? "";
}

export async function answerSum(page: Page): Promise<string> {
  return (await page.locator(".sentence .sum").textContent()) ?? "";
}

/** An input by its label. */
export function cell(page: Page, label: string): Locator {
  return page.getByLabel(label, { exact: true });
}

/** "Friday 19 November 2027" as days since 1970, for comparing. */
export function dayOf(longDate: string): number {
  const day = Date.parse(`${longDate.replace(/^\w+ /, "")} UTC`) / 86_400_000;
  if (!Number.isInteger(day)) throw new Error(`“${longDate}” is not a date.`);
  return day;
}
