import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type BuiltPage, serveBuiltPage } from "./support/builtPage.ts";
import { startChromium } from "./support/chromium.ts";
import { drawn, openNotebook } from "./support/notebook.ts";

/** Px of CSS: 96 an inch. */
const mm = 96 / 25.4;

// ISO 216: a sheet of A4 is 210 by 297 mm. What belongs on it: common practice, no source.
describe("the page on paper", () => {
  let browser: Browser;
  let built: BuiltPage;
  beforeAll(async () => {
    [browser, built] = await Promise.all([startChromium(), serveBuiltPage()]);
  });
  afterAll(async () => {
    await browser?.close();
    await built?.stop();
  });

  it("is a report: headings, whole charts, tables with repeated heads, all words, and nothing to press", async () => {
    const { page, close } = await openNotebook(browser, built.address);
    await drawn(page);
    await page.locator("#level").evaluate((section) => section.scrollIntoView());
    await page.locator("#level [answered]").waitFor();
    await page.emulateMedia({ media: "print" });
    // Between margins of 16 mm a sheet is this wide; the rules for narrow screens are not those of paper.
    await page.setViewportSize({ width: Math.floor((210 - 32) * mm), height: 900 });

    const paper = await page.evaluate(() => {
      const shown = (one: Element) => one.getBoundingClientRect().height > 0;
      const all = (selector: string) => [...document.querySelectorAll(selector)];
      const display = (selector: string) => all(selector).map((one) => getComputedStyle(one).display);
      return {
        titles: all("h2")
          .filter(shown)
          .map((one) => one.textContent?.trim()),
        pressed: all("button:not(.source, .fold), select, summary, textarea, progress, input[type=checkbox]")
          .filter(shown)
          .filter((one) => !one.matches(".problem textarea, .response input"))
          .map((one) => one.outerHTML.slice(0, 80)),
        lists: [...new Set(display(".list-table"))],
        heads: [...new Set(display(".list-table thead, .stated thead, .levels thead"))],
        told: getComputedStyle(
          document.querySelector(
            '[data-text="What moved the opening since last time, and which decision is wanted"]',
          ) ?? document.body,
          "::before",
        ).content,
        tall: all("figure svg")
          .map((one) => one.getBoundingClientRect().height)
          .filter((height) => height > 0),
        wide: all("main *")
          .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
          .filter((one) => one.closest(".unseen, svg") === null)
          .map((one) => one.outerHTML.slice(0, 80)),
      };
    });
    expect(paper.titles).toEqual(
      expect.arrayContaining(["Futures", "Purpose", "People", "Work", "Register", "Why this level"]),
    );
    // What was not worked out has no heading either.
    expect(paper.titles).not.toContain("Hand over");
    expect(paper.titles).not.toContain("Contingency");
    expect(paper.pressed).toEqual([]);
    expect(paper.lists).toEqual(["table"]);
    expect(paper.heads).toEqual(["table-header-group"]);
    expect(paper.told).toMatch(/which decision is wanted/);
    expect(Math.max(...paper.tall)).toBeLessThan((297 - 38) * mm);
    expect(paper.wide).toEqual([]);
    await close();
  });
});
