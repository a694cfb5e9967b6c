import type { Estimate, RangeEstimate } from "@leeway/core";
import { beforeAll, describe, expect, it } from "vitest";
import { typedEstimate } from "../../apps/notebook/src/plan/typedEstimate.ts";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

const pert: RangeEstimate = {
  kind: "range",
  low: 5,
  likely: 7,
  high: 14,
  shape: "pert",
  bounds: "p10-p90",
  unit: "days",
};

// By the words of the plan format: what needs a likely value, what takes none, low <= likely <= high.
describe("typedEstimate()", () => {
  const typed = (
    low: string,
    likely: string,
    high: string,
    before: Estimate = pert,
    usual: unknown = undefined,
  ) => typedEstimate({ low, likely, high }, before, usual);

  it("keeps shape and bounds of what was there", () => {
    expect(typed("6", "9", "19")).toEqual({ ...pert, low: 6, likely: 9, high: 19 });
    expect(typed("", "9", "")).toEqual({ kind: "fixed", value: 9, unit: "days" });
    expect(typed("9", "9", "9")).toEqual({ kind: "fixed", value: 9, unit: "days" });
  });

  it("takes the plan's own where there was no range", () => {
    const fixed: Estimate = { kind: "fixed", value: 7, unit: "weeks" };
    const usual = { shape: "triangular", bounds: "p5-p95" };
    expect(typed("1", "2", "4", fixed, usual)).toMatchObject({ ...usual, unit: "weeks" });
    expect(typed("1", "2", "4", fixed)).toMatchObject({ shape: "pert", bounds: "extremes" });
  });

  it.each([
    ["out of order", "9", "7", "14"],
    ["one end alone", "5", "7", ""],
    ["no likely value", "5", "", "14"],
    ["not a number", "soon", "7", "14"],
    ["nothing", "", "", ""],
  ])("says nothing of what is not an estimate yet: %s", (_name, low, likely, high) => {
    expect(typed(low, likely, high)).toBeUndefined();
  });
});

describe("the curve of an estimate while it is typed", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
  });

  const of = "Building permit decided";
  const part = (name: string) => cell(notebook.page, `${of}: ${name}, in working days`);
  const title = () => notebook.page.locator(".curve-cell .figure-title").textContent();

  it.each([844, 664, 480])("is drawn whole on a telephone %i px high, or only read", async (height) => {
    const { page } = notebook;
    await page.setViewportSize({ width: 390, height });
    await part("low").focus();
    await page.locator(".curve-cell svg").waitFor({ state: "attached" });
    await expect.poll(title).toMatch(/^One time in ten/);
    const cut = await page.locator(".curve-cell").evaluate((panel) => {
      const curve = panel.querySelector("svg")?.getBoundingClientRect();
      return (curve?.height ?? 0) > 0 ? (curve?.bottom ?? 0) > panel.getBoundingClientRect().bottom : false;
    });
    expect(cut).toBe(false);
    expect(await page.locator(".curve-cell svg").isVisible()).toBe(height > 800);
    await page.keyboard.press("Escape");
    // Closed by Escape it opens again where the field is gone to anew.
    await part("low").blur();
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  // The example's bounds are one in ten at each end, so the ends that are typed are the reading itself.
  it("says its one-in-ten reading live, and moves no row", async () => {
    const { page } = notebook;
    const next = page
      .locator("#work tbody tr[id^=task-]")
      .filter({ has: part("high") })
      .locator("~ tr")
      .first();
    await part("low").focus();
    await page.locator(".curve-cell svg").waitFor();
    const before = await next.boundingBox();
    await part("low").fill("21");
    await part("high").fill("87");
    await expect
      .poll(title)
      .toMatch(
        /^One time in ten it takes less than 21.working.days, one in ten more than 87; average \d+.working.days$/,
      );
    await part("high").fill("97");
    await expect.poll(title).toContain("more than 97");
    expect((await next.boundingBox())?.height).toBe(before?.height);
    // Said to those who listen, once the typing rests.
    await page.locator(".curve-cell [role=status]", { hasText: "more than 97" }).waitFor();
    // What is no estimate yet stays quiet about it and keeps the last curve.
    await part("high").fill("9");
    await page.locator(".curve-cell .settling svg").waitFor();
    expect(await page.locator(".curve-cell").textContent()).toContain("in this order");
    await part("high").fill("60");
    await expect.poll(title).toContain("more than 60");
  });

  it("is reached and left by keys, with its table", async () => {
    const { page } = notebook;
    // Away and back: once, on a busy machine, the curve was gone here though nothing had closed it; why is not known.
    await part("low").focus();
    await part("high").focus();
    const table = page.locator(".curve-cell summary");
    for (let stops = 0; stops < 12; stops++) {
      if (await table.evaluate((summary) => summary === document.activeElement)) break;
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Enter");
    await expect
      .poll(async () =>
        (await page.locator(".curve-cell .figure-table tbody tr").allTextContents()).join(" "),
      )
      .toMatch(/One in ten is below21.*Average\d+.*One in ten is above60/);
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      await table.focus();
      expect(await violations(page, ".curve-cell")).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    }
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.keyboard.press("Escape");
    await page.locator(".curve-cell").waitFor({ state: "detached" });
    // Whoever was in it is back at the estimate.
    expect(await part("low").evaluate((input) => input === document.activeElement)).toBe(true);
    await part("likely").focus();
    await page.locator(".curve-cell svg").waitFor();
    await page.getByRole("button", { name: "Undo" }).focus();
    await page.locator(".curve-cell").waitFor({ state: "detached" });
    await settled(page);
    expect(notebook.troubles).toEqual([]);
  });

  it("reads a delay of the register as one", async () => {
    const { page } = notebook;
    await page.locator("#register input[data-estimate$='.delay']").first().focus();
    await expect.poll(title).toMatch(/^One time in ten it delays by less than/);
  });

  // Quantiles of a triangular distribution from a to b with its mode at c: a + sqrt(p (b - a)(c - a)) and
  // b - sqrt((1 - p)(b - a)(b - c)); its mean (a + b + c) / 3. Textbook, recalled.
  it("tells P10 and P90 of what is typed as the least and the most", async () => {
    const { page } = notebook;
    const [a, c, b] = [2, 4, 10];
    const low = a + Math.sqrt(0.1 * (b - a) * (c - a));
    const high = b - Math.sqrt(0.1 * (b - a) * (b - c));
    await reading("extremes", "triangular");
    await cell(page, "Strip the old roof: high, in working days").focus();
    await expect
      .poll(title)
      .toMatch(
        new RegExp(
          `^One time in ten it takes less than ${low.toFixed(1)}.working.days, one in ten more than ${high.toFixed(1)}; average ${((a + b + c) / 3).toFixed(1)}.working.days$`,
        ),
      );
    const marks = (await page.locator(".curve-cell svg text").allTextContents()).join(" ");
    expect(marks).toContain(`1 in 10 below ${low.toFixed(1)}`);
    expect(marks).toContain(`1 in 10 above ${high.toFixed(1)}`);
  });

  it.each([
    ["extremes", "Low and high are the least and the most it can take."],
    ["p10-p90", "Low (P10) is beaten one time in ten, high (P90) is exceeded one time in ten."],
    ["p5-p95", "Low (P5) is beaten one time in twenty, high (P95) is exceeded one time in twenty."],
  ])("says above the table what low and high are: %s", async (bounds, words) => {
    await reading(bounds, "pert");
    await notebook.page.locator("#work .note", { hasText: words }).first().waitFor();
  });

  async function reading(bounds: string, shape: string): Promise<void> {
    const { page } = notebook;
    page.setDefaultTimeout(90_000);
    await page.locator("#plan-text").fill(`format: 1
title: Shed roof ${bounds} ${shape}
start: 2027-02-01
iterations: 200
estimates: { shape: ${shape}, bounds: ${bounds} }
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 4, 10] }
`);
    await page.locator("h1", { hasText: `${bounds} ${shape}` }).waitFor();
    await settled(page);
  }
});
