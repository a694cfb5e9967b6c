import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

// What may be stated is the published format's: a document with the edits must read.
describe("what the plan is built on, by keyboard", () => {
  const served = servedPage();

  it.each([1280, 390])(
    "takes running costs, releases, what is set aside and what being late costs: %i px",
    async (width) => {
      const { page, troubles, close } = await served.open();
      await page.setViewportSize({ width, height: 900 });
      await fillPlan(page, smallPlan);
      const text = page.locator("#plan-text");
      const written = async () => parse(await text.inputValue());
      const type = (label: string, words: string) => typeOver(page, label, words);
      const sum = page.locator(".sentence .sum");
      const before = await sum.textContent();
      expect(await page.locator("leeway-budget").textContent()).toContain("No overhead yet");

      await page.getByRole("button", { name: "Add an overhead" }).press("Enter");
      await page.keyboard.type("Rent of the yard");
      await page.keyboard.press("Tab");
      await page.keyboard.type("dear");
      await page.keyboard.press("Enter");
      await page.locator("leeway-budget .message", { hasText: "“dear” is not a number" }).waitFor();
      await cell(page, "New overhead: each working day, EUR").fill("120");
      await page.keyboard.press("Enter");
      await expect
        .poll(async () => (await written()).overheads, slow)
        .toEqual([{ id: "rent-of-the-yard", name: "Rent of the yard", perDay: 120 }]);
      await page.keyboard.press("Escape");
      // Every working day costs it: what is committed to is dearer.
      await expect.poll(() => sum.textContent(), slow).not.toBe(before);
      await type("overhead “Rent of the yard”: from the start of", "frame");
      await type("overhead “Rent of the yard”: to the finish of", "nothing of the kind");
      await page
        .locator("leeway-budget .message", { hasText: "No task has “nothing of the kind”" })
        .waitFor();
      await type("overhead “Rent of the yard”: to the finish of", "tiles");
      await expect
        .poll(async () => (await written()).overheads[0], slow)
        .toMatchObject({ from: "frame", to: "tiles" });

      await page.getByRole("button", { name: "Add a release" }).press("Enter");
      await page.keyboard.type("1 Mar 2027");
      await page.keyboard.press("Tab");
      await page.keyboard.type("2,500");
      await page.keyboard.press("Enter");
      await page.keyboard.press("Escape");
      await expect
        .poll(async () => (await written()).commitment.funds, slow)
        .toMatchObject([{ amount: 9000 }, { from: "2027-03-01", amount: 2500 }]);
      await type("The plan: reserve, EUR", "1,800");
      await cell(page, "The plan: contingency held by").selectOption("bo");
      await type("The plan: how it is released", "By a word to Ann");
      // The day it counts from by itself comes into the field that was gone to: what is typed then takes its place.
      const after = cell(page, "Finishing late: late after");
      await after.focus();
      await cell(page, "Finishing late: each week: likely, in EUR").evaluate((one) => {
        if (one instanceof HTMLInputElement) one.value = "400";
        one.dispatchEvent(new Event("change", { bubbles: true }));
      });
      await expect.poll(() => after.inputValue(), slow).toMatch(/^31\sMar\s2027$/);
      await page.keyboard.type("7 Apr 2027");
      await page.keyboard.press("Enter");
      await expect.poll(written, slow).toMatchObject({
        commitment: { reserve: 1800, holder: "bo", releaseRule: "By a word to Ann" },
        lateness: { perWeek: 400, after: "2027-04-07" },
      });
      await settled(page);
      expect(await violations(page, "#money")).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      expect(readPlan(await text.inputValue()).problems).toEqual([]);
      expect(troubles).toEqual([]);
      await close();
    },
  );

  it("takes title, first day, and whether people are counted", async () => {
    const { page, troubles, close } = await served.open();
    await fillPlan(page, smallPlan);
    const text = page.locator("#plan-text");
    const written = async () => parse(await text.inputValue());
    await typeOver(page, "The plan: title", "Boat shed by the pier");
    await expect.poll(() => page.locator("#title").textContent(), slow).toBe("Boat shed by the pier");
    const date = page.locator(".sentence .date");
    const before = await date.textContent();
    await typeOver(page, "The plan: work can begin on", "1 Mar 2027");
    await expect.poll(async () => (await written()).start, slow).toBe("2027-03-01");
    await expect.poll(() => date.textContent(), slow).not.toBe(before);
    await typeOver(page, "The plan: title", "");
    await page.locator("#purpose .message", { hasText: "A plan needs a title" }).waitFor();
    expect((await written()).title).toBe("Boat shed by the pier");
    await cell(page, "The plan: title").press("Escape");

    const people = page.locator("#people");
    await people.getByLabel("A task waits until its people are free").press("Space");
    await expect.poll(async () => (await written()).respectCapacity, slow).toBe(false);
    await people.getByText("Everybody counts as there whenever needed").waitFor(slow);
    expect(await violations(page, "#people")).toEqual([]);
    expect(await violations(page, "#purpose")).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});
