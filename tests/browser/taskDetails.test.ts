import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { taskPeople, withoutPerson, withPeople } from "../../apps/notebook/src/plan/taskPeople.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };
const plan = smallPlan.replace("people: [ann, bo]", "people: [{ id: ann, share: 0.5, along: true }, bo]");

// What a task holds and how it may be written is the published format's; a document with the edits must read.
describe("people of a task, as they are stated", () => {
  const document: unknown = parse(plan);

  it("may stand alone, in a list, or with a share that stays", () => {
    expect(taskPeople(document, "tasks[0].people")).toEqual(["bo"]);
    expect(taskPeople(document, "tasks[9].people")).toEqual([]);
    const people = taskPeople(document, "tasks[2].people");
    expect(withPeople(people, ["bo", "ann"])).toEqual([{ id: "ann", share: 0.5, along: true }, "bo"]);
    expect(withoutPerson(people, "bo")).toEqual([{ id: "ann", share: 0.5, along: true }]);
    expect(withoutPerson(["bo"], "bo")).toBeUndefined();
    expect(withPeople([], ["bo", "bo"])).toEqual(["bo"]);
  });
});

describe("the details of a task, by keyboard", () => {
  const served = servedPage();

  it.each([1280, 390])(
    "take people, costs, dates, progress and reasons, and what they change is answered: %i px",
    async (width) => {
      const { page, troubles, close } = await served.open();
      await page.setViewportSize({ width, height: 900 });
      await fillPlan(page, plan);
      const text = page.locator("#plan-text");
      const read = (at: number) => async () => parse(await text.inputValue()).tasks[at];
      const type = (label: string, words: string) => typeOver(page, label, words);
      const row = page.locator("#task-pour");
      const details = row.getByRole("button", { name: /^Details/ });

      await cell(page, "Pour the floor: name").focus();
      expect(await details.getAttribute("aria-expanded")).toBe("false");
      expect(await row.locator(".entry-form").count()).toBe(0);
      await details.press("Enter");
      await row.locator(".entry-form").waitFor();
      expect(await details.getAttribute("aria-expanded")).toBe("true");
      expect(await violations(page, "#work")).toEqual([]);

      await cell(page, "Pour the floor: add a person, by name").focus();
      await page.keyboard.type("quill");
      await page.locator(".suggestions").getByRole("option", { name: "Ann Quill" }).waitFor();
      await page.keyboard.press("ArrowDown");
      await page.keyboard.press("Enter");
      await expect.poll(read(1), slow).toMatchObject({ people: ["bo", "ann"] });
      expect(await cell(page, "Pour the floor: add a person, by name").inputValue()).toBe("");
      const sum = page.locator(".sentence .sum");
      const before = await sum.textContent();
      await type("Pour the floor: cost each working day: likely, in EUR", "4000");
      await type("Pour the floor: cost: likely, in EUR", "1900");
      await type("Pour the floor: not before", "22 Feb 2027");
      await type("Pour the floor: target", "31 Mar 2027");
      await type("Pour the floor: chance it is needed, %", "90");
      await cell(page, "Pour the floor: between low and high: shape").selectOption("triangular");
      await cell(page, "Pour the floor: estimated by").selectOption("bo");
      await type("Pour the floor: why they would know", "Bo poured the last two");
      await type("Pour the floor: note", "The mixer is borrowed");
      await expect.poll(read(1), slow).toMatchObject({
        costPerDay: 4000,
        cost: [1500, 1900, 2600],
        notBefore: "2027-02-22",
        target: "2027-03-31",
        chance: 0.9,
        duration: { likely: 3, shape: "triangular" },
        estimatedBy: "bo",
        basis: "Bo poured the last two",
        note: "The mixer is borrowed",
      });
      // Money each day is money: the sum committed to has moved.
      await expect.poll(() => sum.textContent(), slow).not.toBe(before);
      await type("Pour the floor: cost each working day: likely, in EUR", "");
      await expect.poll(async () => (await read(1)()).costPerDay, slow).toBeUndefined();

      // A share that was stated is said, and stays when somebody else goes.
      await cell(page, "Raise the frame: name").focus();
      await page
        .locator("#task-frame")
        .getByRole("button", { name: /^Details/ })
        .press("Enter");
      expect(await cell(page, "Raise the frame, Ann Quill: share of their time, %").inputValue()).toBe("50");
      await page
        .getByRole("button", { name: /^Take away\s*: Bo Marsh, from Raise the frame/ })
        .press("Enter");
      await expect.poll(read(2), slow).toMatchObject({ people: [{ id: "ann", share: 0.5, along: true }] });

      expect(await violations(page, "#work")).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      expect(readPlan(await text.inputValue()).problems).toEqual([]);
      expect(troubles).toEqual([]);
      await close();
    },
  );

  it("stand level and in columns, whether typed, chosen or several lines long", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, plan);
    await page.locator("#task-pour .more-turn").click();
    const form = page.locator("#task-pour .entry-form");
    await form.waitFor();
    const { edges, rows } = await form.evaluate((it) => {
      const labels = [...it.querySelectorAll(".entry-field .form-label, .part-label")];
      const box = (one: Element | null | undefined) => one?.getBoundingClientRect() ?? new DOMRect();
      const left = box(it).left + box(it).width / 2;
      const behind = (label: Element) =>
        label.parentElement?.querySelector(":is(.entry-value, .part-label + .part-shape) > *");
      return {
        edges: labels
          .filter((label) => box(label).left < left)
          .map(behind)
          .filter((one) => one !== null && one !== undefined)
          .map((one) => Math.round(box(one).left)),
        // Labels stand on the first line of what is behind them: where that differs they are not level.
        rows: labels
          .map((label) => [box(behind(label)).top, box(label).top] as const)
          .filter(([top]) => top !== 0)
          .map(([top, label]) => label - top),
      };
    });
    expect(new Set(edges).size, String(edges)).toBe(1);
    expect(edges.length).toBeGreaterThan(5);
    expect(Math.max(...rows) - Math.min(...rows), String(rows)).toBeLessThan(1.5);
    await close();
  });

  it("record how far the work is", async () => {
    const { page, troubles, close } = await served.open();
    await fillPlan(page, plan);
    const text = page.locator("#plan-text");
    const document = async () => parse(await text.inputValue());
    const type = (label: string, words: string) => typeOver(page, label, words);
    const row = page.locator("#task-dig");
    await cell(page, "Dig the trench: name").focus();
    await row.getByRole("button", { name: /^Details/ }).press("Enter");
    // What was entered first waits for what it needs, and no longer.
    await type("Dig the trench: started", "1 Feb 2027");
    await type("Dig the trench: what remains: likely, in working days", "2");
    await expect.poll(() => row.locator(".entry-form .message").count(), slow).toBe(2);
    expect((await row.locator(".entry-form .message").allTextContents()).join(" ")).toContain(
      "Fill in “Whole plan as of”",
    );
    expect((await document()).tasks[0].started).toBeUndefined();
    await type("Dig the trench: whole plan as of", "3 Feb 2027");
    await expect.poll(async () => (await document()).statusDate, slow).toBe("2027-02-03");
    await expect.poll(() => row.locator(".entry-form .message").count(), slow).toBe(0);
    await type("Dig the trench: spent so far, EUR", "450");
    await expect
      .poll(async () => (await document()).tasks[0], slow)
      .toMatchObject({ started: "2027-02-01", remaining: 2, spent: 450 });
    // Two working days after Wednesday 3 February end on Friday the 5th, in every future.
    await expect
      .poll(async () => (await row.locator(".finish").textContent())?.replace(/\s/g, " ").trim(), slow)
      .toBe("5 Feb");
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });

  it("say at the field what cannot be read or cannot be, and keep it in sight", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, plan);
    const text = page.locator("#plan-text");
    const row = page.locator("#task-dig");
    const message = (words: RegExp) => row.locator(".entry-form .message", { hasText: words });
    await cell(page, "Dig the trench: name").focus();
    const details = row.getByRole("button", { name: /^Details/ });
    await details.press("Enter");
    await typeOver(page, "Dig the trench: target", "soon");
    await message(/not a date/).waitFor();
    await typeOver(page, "Dig the trench: add a person, by name", "Cleo");
    await message(/Nobody in this plan is called “Cleo”/).waitFor();
    await typeOver(page, "Dig the trench: spent so far, EUR", "a lot");
    await message(/a sum of money/).waitFor();
    // Finished, and nothing recorded: read, and refused by the plan's own rules, in the page's names for its fields.
    await typeOver(page, "Dig the trench: finished", "1 Feb 2027");
    await message(/“Finished” needs the plan's “Whole plan as of”/).waitFor();
    expect(await cell(page, "Dig the trench: finished").getAttribute("aria-invalid")).toBe("true");
    expect(await violations(page, "#work")).toEqual([]);
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(parse(await text.inputValue()).tasks[0]).toEqual(parse(plan).tasks[0]);

    // Closed, what waits there would be out of sight: it stays open until nothing waits.
    await details.press("Enter");
    await row.locator(".entry-form").waitFor();
    for (const label of ["target", "add a person, by name", "spent so far, EUR", "finished"]) {
      await cell(page, `Dig the trench: ${label}`).focus();
      await page.keyboard.press("Escape");
    }
    await expect.poll(() => row.locator(".entry-form").count(), slow).toBe(0);
    await close();
  });
});

// A list that ends with what parts its names ends with nothing. Common practice, no source.
describe("what is left behind a name that was typed", () => {
  const served = servedPage();

  it("does not stay in the cell", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, plan);
    const text = page.locator("#plan-text");
    const waits = cell(page, "Lay the tiles: waits for these tasks, by name or id");
    await waits.focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("Raise the frame; Pour the floor; ");
    await waits.dispatchEvent("change");
    expect(await waits.inputValue()).toBe("Raise the frame; Pour the floor");
    await expect
      .poll(async () => parse(await text.inputValue()).tasks[3].after, slow)
      .toEqual(["frame", "pour"]);
    await close();
  });
});
