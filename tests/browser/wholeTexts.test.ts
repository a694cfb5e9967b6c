import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { type BuiltPage, serveBuiltPage } from "./support/builtPage.ts";
import { startChromium } from "./support/chromium.ts";
import { cell, type Notebook, openNotebook, settled } from "./support/notebook.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";
import { withoutFieldSizing } from "./support/withoutFieldSizing.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };
const role = "person “Ann Quill”: role";
const long =
  "Keeps the keys, the tide table and the books of the shed, and is asked before anything is moved";

/** Texts of the lists that are not shown whole, and choices that are not. */
function cutTexts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const ruler = document.createElement("span");
    const found: string[] = [];
    let seen = 0;
    for (const one of document.querySelectorAll<HTMLElement>(
      "#people .list-table :is(.field, select), #purpose .list-table :is(.field, select)",
    )) {
      seen++;
      if (one instanceof HTMLSelectElement) {
        // What is chosen stands before the browser's own mark, some 20 px wide.
        ruler.style.cssText = `position: absolute; white-space: nowrap; font: ${getComputedStyle(one).font}`;
        ruler.textContent = one.selectedOptions[0]?.textContent ?? "";
        document.body.append(ruler);
        if (ruler.offsetWidth + 20 > one.clientWidth) found.push(ruler.textContent);
      } else if (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1)
        found.push((one as HTMLInputElement).value);
    }
    ruler.remove();
    return seen < 100 ? [`only ${seen} looked at`] : found;
  });
}

// Common practice, no source: what a plan says can be read whole, and a text that goes on in a second line is one entry still.
describe("a text in a list", () => {
  let browser: Browser;
  let built: BuiltPage;
  let notebook: Notebook;
  let page: Page;
  beforeAll(async () => {
    [browser, built] = await Promise.all([startChromium(), serveBuiltPage()]);
    notebook = await openNotebook(browser, built.address);
    page = notebook.page;
  });
  afterAll(async () => {
    await notebook?.close();
    await browser?.close();
    await built?.stop();
  });

  it.each([1280, 800, 390])("is read whole on the page, as is what is chosen: %i px", async (width) => {
    await page.setViewportSize({ width, height: 900 });
    await page.locator(".by-task").evaluate((one: HTMLDetailsElement) => {
      one.open = true;
    });
    await page.locator(".by-task table").waitFor();
    const cut = await cutTexts(page);
    expect(cut).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });

  it.each([1280, 800, 390])("is read whole too where fields have one size: %i px", async (width) => {
    const context = await browser.newContext({ viewport: { width, height: 900 } });
    await withoutFieldSizing(context);
    const old = await context.newPage();
    await old.goto(built.address);
    await settled(old);
    const area = old.locator("#people .list-table .wraps").first();
    expect(await area.evaluate((one) => getComputedStyle(one).getPropertyValue("field-sizing"))).toBe(
      "fixed",
    );
    await old.locator(".by-task").evaluate((one: HTMLDetailsElement) => {
      one.open = true;
    });
    await old.locator(".by-task table").waitFor();
    expect(await cutTexts(old)).toEqual([]);
    expect(await old.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await context.close();
  });

  it("is taken in by Enter, in one step of undo, and holds no second line", async () => {
    const text = page.locator("#plan-text");
    await page.setViewportSize({ width: 1280, height: 900 });
    await text.fill(smallPlan);
    await page.locator("h1", { hasText: "Boat shed" }).waitFor();
    await settled(page);
    const before = await text.inputValue();
    const at = cell(page, role);
    const height = () => at.evaluate((one) => one.getBoundingClientRect().height);
    const line = await height();
    const read = async () => parse(await text.inputValue()).people;
    await at.focus();
    await page.keyboard.type(long.slice(0, 40));
    // Pasted from elsewhere, with its line breaks.
    await page.keyboard.insertText(`${long.slice(40, 60)}\n`);
    await page.keyboard.insertText(long.slice(60));
    expect(await at.inputValue()).toBe(`${long.slice(0, 60)} ${long.slice(60)}`);
    await at.fill(long);
    expect(await height()).toBeGreaterThan(line * 1.5);
    await page.keyboard.press("Enter");
    await expect.poll(read, slow).toMatchObject([{ role: long }, { id: "bo" }]);
    // The next row, as from any field; in the last one it stays, and takes the entry in all the same.
    const other = cell(page, "person “Bo Marsh”: role");
    expect(await other.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.type("Mason");
    await page.keyboard.press("Enter");
    await expect.poll(read, slow).toMatchObject([{ role: long }, { role: "Mason" }]);
    expect(await other.inputValue()).toBe("Mason");
    await page.keyboard.press("ArrowUp");
    expect(await at.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.type("x");
    await page.keyboard.press("Escape");
    expect(await at.inputValue()).toBe(long);
    await settled(page);
    for (const steps of [1, 2]) {
      await page.keyboard.press("Control+Z");
      await expect
        .poll(
          async () => (await read()).filter((one: { role?: string }) => one.role !== undefined).length,
          slow,
        )
        .toBe(2 - steps);
    }
    expect(await text.inputValue()).toBe(before);
  });

  it("has names suggested in it", async () => {
    const at = cell(page, "phase “Roof”: is told after");
    await at.focus();
    await page.keyboard.type("Ann Quill; har");
    await page.locator(".suggestions").waitFor();
    expect(await violations(page, "#people")).toEqual([]);
    await page.keyboard.press("ArrowDown");
    expect(await at.getAttribute("aria-activedescendant")).toBe("suggestion-0");
    await page.keyboard.press("Enter");
    await expect.poll(() => at.inputValue(), slow).toBe("Ann Quill; Harbour office");
    await expect
      .poll(async () => parse(await page.locator("#plan-text").inputValue()).phases[1].informed, slow)
      .toEqual(["ann", "harbour"]);
    expect(notebook.troubles).toEqual([]);
  });
});
