import { budget, readPlan } from "@leeway/core";
import type { Locator } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

const rowsOf = (table: Locator): Promise<string[][]> =>
  table
    .locator("tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll("th, td")].map((one) => one.textContent?.trim() ?? "")),
    );
const number = (text = ""): number => Number(text.replace(/[^\d-]/g, ""));

// What adds up and what does not is the library's law 7 ("Sums are exact"); the sums are those of `leeway money`.
describe("the money on the page", () => {
  const served = servedPage();

  it("is told by component, phase and month, contingency and reserve apart, and reads at 390 px", async () => {
    const { plan } = readPlan(smallPlan);
    if (plan === undefined) throw new Error("the plan of the tests does not read");
    const { budget: found } = budget(plan);
    if (found === undefined) throw new Error("no budget");
    const { page, troubles, close } = await served.open();
    await fillPlan(page, smallPlan);
    await page.locator("#money").evaluate((section) => section.scrollIntoView());
    await page.locator("#money caption", { hasText: "What the money is for" }).waitFor();
    const table = (caption: string) =>
      page.locator("#money table", { has: page.locator("caption", { hasText: caption }) });

    const components = await rowsOf(table("What the money is for, EUR"));
    expect(components.map(([name]) => name)).toEqual(["Task costs, once", "People", "Together"]);
    const [first, second, all] = components;
    // The column of the committed sum adds up as it is shown.
    expect(number(first?.[5]) + number(second?.[5])).toBe(number(all?.[5]));
    const near = Math.max(50, found.total.committed * 0.02);
    expect(Math.abs(number(all?.[4]) - found.total.p80)).toBeLessThan(near);

    const phases = await rowsOf(table("By phase, EUR"));
    expect(phases.map(([name]) => name)).toEqual(["Ground", "Roof", "Together"]);
    const apart = await rowsOf(table("Contingency and reserve, apart"));
    expect(apart[0]).toEqual(expect.arrayContaining(["Ann Quill", "yes"]));
    expect(apart[1]).toEqual(expect.arrayContaining(["1,500", "the sponsor", "no"]));
    const months = await rowsOf(table("When it is needed, against what is released by then"));
    expect(months[0]?.[0]).toBe("Feb 2027");
    expect(months[0]?.[5]).toBe("9,000");
    expect(await rowsOf(table("Month by month, what it is for"))).toHaveLength(months.length);
    await page.locator('#money leeway-figure[chart="fundsMonths"] figure').waitFor();
    expect(await violations(page, "#money")).toEqual([]);

    await page.setViewportSize({ width: 390, height: 900 });
    await settled(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await violations(page, "#money")).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});
