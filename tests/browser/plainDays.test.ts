import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, settled } from "./support/notebook.ts";
import { plainPlan } from "./support/plainPlan.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };

/** Words of a sum: of none at all, or of one that cannot be. */
const sums = /EUR|€|same sum|cost no more|committed sum|dates? (and|or|nor) (its )?sums?|takes .* money/i;

/** A finding that speaks of any plan. */
const finding = /weigh a date or a sum against a purpose/;

// That a reader who has no money in the plan is told of none, common practice, no source.
describe("a plan without any money", () => {
  const served = servedPage();

  it("is told in dates and days in every section, said aloud and handed over", async () => {
    const { page, troubles, close } = await served.open();
    page.setDefaultTimeout(slow.timeout);
    await fillPlan(page, plainPlan);
    const title = await page.locator("h1").textContent();
    // What moved is told since this version, and not since the example that the page opened on.
    const pin = page.locator("#changes form.pin");
    await pin.locator("input").fill("First");
    await pin.locator("button").click();
    await page.locator("#changes", { hasText: "What moved since “First”" }).waitFor();
    await everySection(page);
    expect(await said(page)).toEqual([]);
    expect(await page.locator('leeway-level-curve[chart="costCurve"]').count()).toBe(0);
    expect(await page.locator("#money").textContent()).toContain(
      "The plan speaks of no money. Give people a rate",
    );
    // The drawings hold the same words for who cannot see them.
    const labels = await page
      .locator("main svg[aria-label], main [role='img'], main [role='slider']")
      .evaluateAll((all) =>
        all.map((one) => `${one.getAttribute("aria-label")} ${one.getAttribute("aria-valuetext")}`),
      );
    expect(labels.filter((words) => sums.test(words))).toEqual([]);

    // Another level is looked at, by key: the answer, the line at the top, the note and the table say it.
    const handle = page.locator(".level-handle");
    expect(await handle.count()).toBe(1);
    await handle.focus();
    await page.keyboard.press("ArrowRight");
    await page.locator("leeway-answer", { hasText: "Read off the curve" }).waitFor();
    expect(await page.locator(".bar-answer").textContent()).toMatch(/at\s81\s%/);
    expect(await handle.getAttribute("aria-valuetext")).toMatch(
      /^81\s%: \w{3} \d+ \w+ \d{4}, read off the curve$/,
    );
    expect(await said(page)).toEqual([]);
    await page.keyboard.press("Escape");

    // An edit: what it was, how far it moved, and what is said aloud.
    await cell(page, "Lay the stones: high, in working days").fill("30");
    await page.keyboard.press("Enter");
    await page.locator(".aside-line", { hasText: "later" }).waitFor();
    await settled(page);
    await everySection(page);
    expect(await page.locator(".aside-line").textContent()).toMatch(
      /^Was \d+ \w+ 2027,\s+now \d+ \w+ 2027:\s+\S+ working days \(\d+ calendar days\) later\.\s+Why it moved$/,
    );
    expect(await page.locator("#announcement").textContent()).toMatch(
      /^New answer at 80\s%: .*\. It was .*\.$/,
    );
    expect(await said(page)).toEqual([]);
    expect(await violations(page)).toEqual([]);

    // What is handed over.
    for (const name of ["Save as one page", "Save as HTML", "Save as Markdown"]) {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.locator("leeway-hand-over").getByRole("button", { name, disabled: false }).first().click(),
      ]);
      const file = readFileSync(await download.path(), "utf8");
      expect(file).toContain(title);
      const text = name.includes("Markdown") ? file : await shown(page, file);
      expect(wordsOf(text), name).toEqual([]);
    }
    expect(troubles).toEqual([]);
    await close();
  }, 300_000);
});

/** Goes through all sections, unfolded, until each has its answer. */
async function everySection(page: Page): Promise<void> {
  for (const details of await page.locator("main section details:not([open]) > summary").all())
    if (await details.isVisible()) await details.click();
  for (const section of await page.locator("main section[id]").all()) {
    await section.scrollIntoViewIfNeeded();
    await section.evaluate((one) => one.scrollIntoView());
    await expect.poll(() => section.locator("progress").count(), slow).toBe(0);
    const figures = section.locator("leeway-figure");
    await expect
      .poll(() => figures.evaluateAll((all) => all.filter((one) => !one.hasAttribute("drawn")).length), slow)
      .toBe(0);
  }
  await page.getByRole("button", { name: "Save as one page", disabled: false }).waitFor();
}

/** The lines of the page that speak of a sum. */
async function said(page: Page): Promise<string[]> {
  await settled(page);
  await entries(page, true);
  const parts = page.locator("main section[id]:not(#text), #announcement, leeway-bar, leeway-stamp");
  const texts = await parts.allInnerTexts();
  await entries(page, false);
  return texts.flatMap(wordsOf);
}

/** Hides what is to be filled in: where money may be written into the plan, its unit is said. */
async function entries(page: Page, hidden: boolean): Promise<void> {
  await page.evaluate((hide) => {
    const fields = document.querySelectorAll<HTMLElement>(
      ".states .line, .part, label:not(.response), table:has(input) th[scope=col]:not(.adds)",
    );
    for (const one of fields) one.style.display = hide ? "none" : "";
  }, hidden);
}

function wordsOf(text: string): string[] {
  return text
    .split(/\n|\t/)
    .map((line) => line.trim())
    .filter((line) => sums.test(line) && !finding.test(line));
}

/** All that a saved page can show, what is folded away as well, and what it reads out at other levels. */
async function shown(page: Page, file: string): Promise<string> {
  const reader = await page.context().newPage();
  await reader.setContent(file);
  const others = await reader.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
    const labels = [...document.querySelectorAll("[aria-label]")].map((one) =>
      one.getAttribute("aria-label"),
    );
    return [...labels, document.getElementById("levels")?.textContent];
  });
  const text = [...(await reader.locator("body").allInnerTexts()), ...others].join("\n");
  await reader.close();
  return text;
}
