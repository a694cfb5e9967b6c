import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { countedIn } from "../../apps/notebook/src/plan/countedIn.ts";
import { drawsCell, readDraws } from "../../apps/notebook/src/plan/namedDraws.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

// `cost:ID` for a draw of a cost, and that `unit` and `worth` belong to a quantity, are the published format's.
describe("what is said of several tasks, or in units", () => {
  const tasks = [
    { id: "dig", name: "Dig the trench" },
    { id: "pour", name: "Pour the floor" },
    { id: "count", name: "Cost of the roof agreed" },
  ];
  const shown = new Map(tasks.map(({ id, name }) => [id, name]));

  it("names tasks, and costs as costs of tasks, both ways", () => {
    const cellText = drawsCell(["dig", "cost:pour", "count"], shown);
    expect(cellText).toBe("Dig the trench; cost of Pour the floor; Cost of the roof agreed");
    expect(readDraws(cellText, tasks)).toEqual({ value: ["dig", "cost:pour", "count"] });
    expect(readDraws("cost:pour; dig", tasks)).toEqual({ value: ["cost:pour", "dig"] });
    expect(readDraws("dig; trench", tasks)).toHaveProperty("words");
    expect(readDraws("dig; roofing", tasks)).toHaveProperty("words");
  });

  it("counts a benefit in units and in money again, and leaves nothing behind", () => {
    const money: unknown = parse("benefits: [{ id: calm, name: Calm, amount: [1, 2, 3], per: year }]");
    expect(countedIn("quantity", "benefits[0]", money)).toEqual([
      { path: "benefits[0].quantity", value: [1, 2, 3] },
      { path: "benefits[0].unit", value: "units" },
      { path: "benefits[0].amount", value: undefined },
    ]);
    const units: unknown = parse("benefits: [{ id: calm, name: Calm, quantity: 2, unit: hours }]");
    expect(countedIn("amount", "benefits[0]", units)).toEqual([
      { path: "benefits[0].amount", value: 2 },
      { path: "benefits[0].quantity", value: undefined },
      { path: "benefits[0].unit", value: undefined },
    ]);
  });
});

describe("the purpose, by keyboard", () => {
  const served = servedPage();
  const plan = smallPlan.replace(
    "risks:",
    `benefits:
  - { id: fees, name: Mooring fees, amount: [4000, 6000, 7000], per: year } # a guess
  - { id: hours, name: Less bailing, amount: 20, per: month }
risks:`,
  );

  it.each([1280, 390])("takes currency, what stays, and all of a benefit: %i px", async (width) => {
    const { page, troubles, close } = await served.open();
    await page.setViewportSize({ width, height: 900 });
    await fillPlan(page, plan);
    const text = page.locator("#plan-text");
    const written = async () => parse(await text.inputValue());
    const worth = page.locator("#purpose .worth");
    const purpose = page.locator("#purpose");

    await typeOver(page, "The plan: currency", "pounds");
    await purpose.locator(".message", { hasText: "three letters" }).waitFor();
    await typeOver(page, "The plan: currency", "gbp");
    await expect.poll(async () => (await written()).currency, slow).toBe("GBP");
    expect(await cell(page, "The plan: currency").inputValue()).toBe("GBP");

    await page.getByRole("button", { name: "Add what cannot be changed" }).press("Enter");
    await page.keyboard.type("The slipway stays open");
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => (await written()).purpose?.constraints, slow)
      .toEqual(["The slipway stays open"]);
    await page.keyboard.press("Escape");

    const before = await worth.textContent();
    await typeOver(page, "Benefits: years counted", "5");
    await typeOver(page, "Benefits: discount rate, % a year", "3.5");
    await expect
      .poll(async () => (await written()).appraisal, slow)
      .toEqual({ years: 5, discountRate: 0.035 });
    await expect.poll(() => worth.textContent(), slow).not.toBe(before);
    await typeOver(page, "Benefits: years counted", "500");
    await purpose.locator(".message", { hasText: "at least 1 year and at most 100" }).waitFor();
    await typeOver(page, "Benefits: years counted", "5");

    await purpose.locator("summary", { hasText: "More of each benefit" }).press("Enter");
    await cell(page, "Mooring fees: what sort it is").selectOption("revenue");
    await cell(page, "Mooring fees: owner").selectOption("harbour");
    await typeOver(page, "Mooring fees: how it is today", "No mooring is let");
    await typeOver(page, "Mooring fees: how it is to be", "All eight are");
    await typeOver(page, "Mooring fees: months until it is there in full", "6");
    await typeOver(page, "Mooring fees: months it lasts", "48");
    await typeOver(page, "Mooring fees: last day it counts", "31 Dec 2032");
    await typeOver(page, "Mooring fees: months until it begins", "-1");
    await purpose.locator(".effect .message", { hasText: "0 or more" }).waitFor();
    expect(await purpose.locator(".message").count()).toBe(1);
    await typeOver(page, "Mooring fees: months until it begins", "1");
    await expect
      .poll(async () => (await written()).benefits[0], slow)
      .toEqual({
        id: "fees",
        name: "Mooring fees",
        amount: [4000, 6000, 7000],
        per: "year",
        kind: "revenue",
        owner: "harbour",
        baseline: "No mooring is let",
        target: "All eight are",
        ramp: 6,
        lasts: 48,
        until: "2032-12-31",
        lag: 1,
      });
    await cell(page, "Less bailing: counted in").selectOption("units");
    await typeOver(page, "Less bailing: unit", "hours");
    await typeOver(page, "Less bailing: worth of one, GBP", "15");
    await expect
      .poll(async () => (await written()).benefits[1], slow)
      .toEqual({
        id: "hours",
        name: "Less bailing",
        quantity: 20,
        unit: "hours",
        worth: 15,
        per: "month",
      });
    await typeOver(page, "Benefits: discount rate, % a year", "");
    await expect.poll(async () => (await written()).appraisal, slow).toEqual({ years: 5 });
    await typeOver(page, "Benefits: years counted", "");
    await expect.poll(async () => (await written()).appraisal, slow).toBeUndefined();
    await settled(page);
    expect(await violations(page, "#purpose")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(await text.inputValue()).toContain("# a guess");
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});

describe("whose finish is committed to", () => {
  const served = servedPage();

  it("is a task by its name, or the whole plan's", async () => {
    const { page, troubles, close } = await served.open();
    await fillPlan(page, smallPlan);
    const text = page.locator("#plan-text");
    const whose = async () => parse(await text.inputValue()).commitment.finishOf;
    const label = "Whose finish; empty: the whole plan's, a task by its name";
    const date = page.locator(".sentence .date");
    const before = await date.textContent();
    await typeOver(page, label, "no such task");
    await page.locator("#commitment .message", { hasText: "No task has “no such task”" }).waitFor();
    await typeOver(page, label, "the floor");
    await expect.poll(whose, slow).toBe("pour");
    await expect.poll(() => date.textContent(), slow).not.toBe(before);
    expect(await violations(page, "#commitment")).toEqual([]);
    await typeOver(page, label, "");
    await expect.poll(whose, slow).toBeUndefined();
    await expect.poll(() => date.textContent(), slow).toBe(before);
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});

describe("spans to watch and estimates that move together, by keyboard", () => {
  const served = servedPage();

  it.each([1280, 390])("are added, changed and removed: %i px", async (width) => {
    const { page, troubles, close } = await served.open();
    await page.setViewportSize({ width, height: 900 });
    await fillPlan(page, smallPlan);
    const text = page.locator("#plan-text");
    const written = async () => parse(await text.inputValue());
    const section = page.locator("leeway-together");
    await section.locator("summary").press("Enter");
    await section.getByText("No span yet").waitFor();

    await page.getByRole("button", { name: "Add a span" }).press("Enter");
    await page.keyboard.type("Floor to roof");
    await page.keyboard.press("Tab");
    await page.keyboard.type("pour");
    await page.keyboard.press("Tab");
    await page.keyboard.type("tiles");
    await page.keyboard.press("Tab");
    await page.keyboard.type("soon");
    await page.keyboard.press("Enter");
    await section.locator(".message", { hasText: "a number of calendar days" }).waitFor();
    await cell(page, "New span: at most, calendar days").fill("12");
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => (await written()).intervals, slow)
      .toEqual([{ id: "floor-to-roof", name: "Floor to roof", from: "pour", to: "tiles", atMost: 12 }]);
    await page.keyboard.press("Escape");
    await section.getByText(/calendar days; at most 12: \d+\s%/).waitFor(slow);
    await typeOver(page, "span “Floor to roof”: from the finish of", "Dig");
    await typeOver(page, "span “Floor to roof”: at most, calendar days", "");
    await expect
      .poll(async () => (await written()).intervals, slow)
      .toEqual([{ id: "floor-to-roof", name: "Floor to roof", from: "dig", to: "tiles" }]);

    await page.getByRole("button", { name: "Add estimates that move together" }).press("Enter");
    await page.keyboard.type("Dig the trench");
    await page.keyboard.press("Tab");
    await page.keyboard.type("2");
    await page.keyboard.press("Enter");
    await section.locator(".message", { hasText: "Name two tasks or more" }).waitFor();
    await cell(page, "New set of estimates: tasks, parted by semicolons").fill(
      "Dig the trench; Pour the floor; cost of pour",
    );
    await page.keyboard.press("Enter");
    await section.locator(".message", { hasText: "as closely as can be" }).waitFor();
    await cell(page, "New set of estimates: how closely, -1 to 1").fill("0.6");
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => (await written()).correlations, slow)
      .toEqual([{ between: ["dig", "pour", "cost:pour"], coefficient: 0.6 }]);
    await page.keyboard.press("Escape");
    const name = "set of estimates “Dig the trench; Pour the floor; cost of Pour the floor”";
    await typeOver(page, `${name}: because`, "The same wet ground");
    await typeOver(page, `${name}: these tasks, or “cost of” one`, "Dig the trench; cost of Lay the tiles");
    // Laying them costs nothing of its own: the plan's own rule, said at the field.
    await section.locator(".message", { hasText: /`?tiles`? has no “Costs”/ }).waitFor();
    expect(await violations(page, "#work")).toEqual([]);
    // What waits is not hidden.
    await section.locator("summary").press("Enter");
    await section.locator(".message").waitFor();
    await cell(page, `${name}: these tasks, or “cost of” one`).press("Escape");
    await typeOver(page, `${name}: these tasks, or “cost of” one`, "Dig the trench; Raise the frame");
    await expect
      .poll(async () => (await written()).correlations, slow)
      .toEqual([{ between: ["dig", "frame"], coefficient: 0.6, cause: "The same wet ground" }]);
    await settled(page);
    expect(await violations(page, "#work")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(readPlan(await text.inputValue()).problems).toEqual([]);

    await cell(page, "set of estimates “Dig the trench; Raise the frame”: because").focus();
    await section.getByRole("button", { name: /^Remove\s*: Dig the trench; Raise the frame/ }).press("Enter");
    await section.getByText("Removed “Dig the trench; Raise the frame”. Undo brings it back.").waitFor(slow);
    await expect.poll(async () => (await written()).correlations, slow).toBeUndefined();
    expect(troubles).toEqual([]);
    await close();
  });
});
