import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { movedPending } from "../../apps/notebook/src/plan/movedPending.ts";
import { readShare } from "../../apps/notebook/src/plan/readShare.ts";
import { saidOf } from "../../apps/notebook/src/plan/saidOf.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

// What may be written as an id alone, and what an object beside it holds, is the published format's.
describe("what is said of an item that may be written as its id", () => {
  const document: unknown = parse(`tasks:
  - { people: bo, after: [dig, { task: pour, lag: 2, note: dries }] }
  - { people: [{ id: ann, share: 0.5, along: true }, bo] }`);
  const said = (path: string, value: unknown, names: "id" | "task" = "id", of = document) =>
    saidOf(of, { path, value, names });

  it("makes an object of it only when more is said, and an id again when nothing more is", () => {
    expect(said("tasks[0].people[0].share", 0.5)).toEqual({
      path: "tasks[0].people",
      value: { id: "bo", share: 0.5 },
    });
    expect(said("tasks[1].people[1].along", undefined)).toEqual({ path: "tasks[1].people[1]", value: "bo" });
    expect(said("tasks[1].people[0].share", undefined)).toEqual({
      path: "tasks[1].people[0].share",
      value: undefined,
    });
    const sole = parse("tasks: [{ people: [{ id: bo, share: 1 }] }]");
    expect(said("tasks[0].people[0].share", undefined, "id", sole)).toEqual({
      path: "tasks[0].people[0]",
      value: "bo",
    });
    expect(said("tasks[0].after[0].lag", -1, "task")).toEqual({
      path: "tasks[0].after[0]",
      value: { task: "dig", lag: -1 },
    });
    expect(said("tasks[0].after[1].lag", undefined, "task")).toEqual({
      path: "tasks[0].after[1].lag",
      value: undefined,
    });
  });

  it("takes a share up to what there is of somebody, and above it where nobody counts", () => {
    const two = { id: "bo", name: "Bo", rate: 0, share: 1, capacity: 2, calendar: "weekdays", away: [] };
    const counts = { respectCapacity: true };
    expect(readShare("150 %", two, counts)).toEqual({ value: 1.5 });
    expect(readShare("", two, counts)).toEqual({ value: undefined });
    expect(readShare("201", two, counts)).toMatchObject({ words: expect.stringContaining("at most 200") });
    expect(readShare("201", two, { respectCapacity: false })).toEqual({ value: 2.01 });
    expect(readShare("-5", two, counts)).toHaveProperty("words");
    expect(readShare("half", two, counts)).toHaveProperty("words");
  });

  it("waits no longer in a row that went with its list", () => {
    const waits = { cells: { value: "x" }, words: "" };
    const pending = new Map([
      ["tasks[0].people[0].share", waits],
      ["tasks[0].people[1].share", waits],
      ["tasks[0].name", waits],
    ]);
    const left = (value: unknown) => [...movedPending(pending, [{ path: "tasks[0].people", value }]).keys()];
    expect(left(["ann"])).toEqual(["tasks[0].people[0].share", "tasks[0].name"]);
    expect(left(undefined)).toEqual(["tasks[0].name"]);
  });
});

describe("who works on a task, with how much of their time", () => {
  const served = servedPage();

  it.each([1280, 390])("is said by keyboard, and answered: %i px", async (width) => {
    const { page, troubles, close } = await served.open();
    await page.setViewportSize({ width, height: 900 });
    await fillPlan(page, smallPlan.replace("rate: 150 }", "rate: 150, share: 0.8, capacity: 2 }"));
    const text = page.locator("#plan-text");
    const read = (at: number) => async () => parse(await text.inputValue()).tasks[at];
    const row = page.locator("#task-frame");
    await cell(page, "Raise the frame: name").focus();
    await row.getByRole("button", { name: /^Details/ }).press("Enter");
    const share = (who: string, own = "") => `Raise the frame, ${who}: share of their time, %${own}`;
    expect(await cell(page, share("Ann Quill")).inputValue()).toBe("");

    await typeOver(page, share("Ann Quill"), "50");
    await expect.poll(read(2), slow).toMatchObject({ people: [{ id: "ann", share: 0.5 }, "bo"] });
    await typeOver(page, share("Bo Marsh", "; empty: 80"), "150 %");
    await page.getByLabel("Raise the frame, Bo Marsh: their absences do not hold it up").press("Space");
    await expect.poll(read(2), slow).toMatchObject({
      people: [
        { id: "ann", share: 0.5 },
        { id: "bo", share: 1.5, along: true },
      ],
    });
    await typeOver(page, share("Bo Marsh", "; empty: 80"), "");
    await page.getByLabel("Raise the frame, Bo Marsh: their absences do not hold it up").press("Space");
    await expect.poll(read(2), slow).toMatchObject({ people: [{ id: "ann", share: 0.5 }, "bo"] });

    await typeOver(page, share("Ann Quill"), "120");
    await row.locator(".entry-form .message", { hasText: /more than there is of Ann Quill/ }).waitFor();
    expect(await violations(page, "#work")).toEqual([]);
    await typeOver(page, share("Ann Quill"), "");
    await expect.poll(read(2), slow).toMatchObject({ people: ["ann", "bo"] });

    // Laid beside each other on the same two, the one that goes first is the one with the higher priority.
    await typeOver(page, "Lay the tiles: waits for these tasks, by name or id", "Pour the floor");
    await expect.poll(async () => (await read(3)()).after, slow).toEqual(["pour"]);
    await cell(page, "Lay the tiles: name").focus();
    await page
      .locator("#task-tiles")
      .getByRole("button", { name: /^Details/ })
      .press("Enter");
    const finish = page.locator("#task-tiles .finish");
    const later = await finish.textContent();
    await typeOver(page, "Lay the tiles: priority", "2");
    await expect.poll(async () => (await read(3)()).priority, slow).toBe(2);
    await expect.poll(() => finish.textContent(), slow).not.toBe(later);
    await typeOver(page, "Lay the tiles: priority", "");
    await expect.poll(async () => (await read(3)()).priority, slow).toBeUndefined();

    expect(await violations(page, "#work")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});

describe("when a task may be worked on, and what for", () => {
  const served = servedPage();
  const more = smallPlan.replace("people: bo, cost", "cost").replace(
    "phases:",
    `calendars:
  harbour: { like: every-day, holidays: [2027-02-08] } # the regatta
purpose: { scope: { in: [{ id: hall, name: The hall itself }] } }
phases:`,
  );

  it.each([1280, 390])("is chosen by keyboard: %i px", async (width) => {
    const { page, troubles, close } = await served.open();
    await page.setViewportSize({ width, height: 900 });
    await fillPlan(page, more);
    const text = page.locator("#plan-text");
    const read = (at: number) => async () => parse(await text.inputValue()).tasks[at];
    const choose = (what: string, value: string) => cell(page, `Pour the floor: ${what}`).selectOption(value);
    const finish = page.locator("#task-pour .finish");
    await cell(page, "Pour the floor: name").focus();
    await page
      .locator("#task-pour")
      .getByRole("button", { name: /^Details/ })
      .press("Enter");
    const calendar = cell(page, "Pour the floor: calendar");
    expect(await calendar.locator("option").allTextContents()).toEqual([
      "its plan's: Monday to Friday",
      "Monday to Friday",
      "every day",
      "harbour",
    ]);
    const before = await finish.textContent();
    await choose("calendar", "every-day");
    await expect.poll(read(1), slow).toMatchObject({ calendar: "every-day" });
    await expect.poll(() => finish.textContent(), slow).not.toBe(before);
    await choose("calendar", "");
    await expect.poll(async () => (await read(1)()).calendar, slow).toBeUndefined();
    // Six days do not fit between two weekends: no plan could be computed, and nothing be entered any more.
    await choose("not across a day off of", "weekdays");
    await page.locator("#task-pour .message", { hasText: "takes up to 6 working days" }).waitFor();
    await choose("not across a day off of", "harbour");
    await choose("the cost falls due", "start");
    await choose("delivers", "hall");
    await choose("how firm it is", "outline");
    await page.getByLabel("Pour the floor: never before its start in the plan as written").press("Space");
    await expect.poll(read(1), slow).toMatchObject({
      unbroken: "harbour",
      due: "start",
      scope: "hall",
      detail: "outline",
      holdToPlan: true,
    });
    await choose("needed only if", "tarp");
    await expect.poll(read(1), slow).toMatchObject({ onlyIf: "tarp" });
    // The cover is not rented: there is no floor to pour.
    await expect
      .poll(async () => (await finish.textContent())?.replace(/\s/g, " "), slow)
      .toContain("Not needed: “");
    await page.getByLabel("Pour the floor: never before its start in the plan as written").press("Space");
    for (const what of ["needed only if", "not across a day off of", "the cost falls due", "delivers"])
      await choose(what, "");
    await choose("how firm it is", "");
    await expect.poll(read(1), slow).toEqual(parse(more).tasks[1]);

    // What costs nothing once has no day on which it falls due.
    await cell(page, "Dig the trench: name").focus();
    await page
      .locator("#task-dig")
      .getByRole("button", { name: /^Details/ })
      .press("Enter");
    await cell(page, "Dig the trench: calendar").waitFor();
    expect(await cell(page, "Dig the trench: the cost falls due").count()).toBe(0);
    expect(await violations(page, "#work")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(await text.inputValue()).toContain("# the regatta");

    // While the text has errors nothing can be entered.
    await text.fill(`${more}oops: true\n`);
    await text.blur();
    await page.locator("#work .stale-mark").waitFor();
    await expect.poll(() => cell(page, "Dig the trench: calendar").isDisabled(), slow).toBe(true);
    expect(troubles).toEqual([]);
    await close();
  });
});

describe("how a task waits for another", () => {
  const served = servedPage();

  it.each([1280, 390])("is said by keyboard: %i px", async (width) => {
    const { page, troubles, close } = await served.open();
    await page.setViewportSize({ width, height: 900 });
    const started = smallPlan
      .replace("people: bo, cost", "cost")
      .replace(
        "after: frame",
        "after: [{ task: frame, lag: [1, 2, 4] }, { task: dig, link: finish-to-finish, note: same crane }]",
      );
    await fillPlan(page, started);
    const text = page.locator("#plan-text");
    const after = (at: number) => async () => parse(await text.inputValue()).tasks[at].after;
    const floor = "Pour the floor waits for Dig the trench";
    const finish = page.locator("#task-pour .finish");
    const before = await finish.textContent();
    await cell(page, "Pour the floor: name").focus();
    await page
      .locator("#task-pour")
      .getByRole("button", { name: /^Details/ })
      .press("Enter");
    expect(await cell(page, `${floor}: kind of link`).inputValue()).toBe("finish-to-start");

    // Both are kept, though the second is entered before the page hears of the first.
    await cell(page, `${floor}: kind of link`).selectOption({ label: "starts once it has started" });
    await typeOver(page, `${floor}: working days later`, "2");
    await expect.poll(after(1), slow).toEqual({ task: "dig", link: "start-to-start", lag: 2 });
    await expect.poll(() => finish.textContent(), slow).not.toBe(before);
    await typeOver(page, `${floor}: working days later`, "soon");
    await page.locator("#task-pour .message", { hasText: "a number of working days" }).waitFor();
    await typeOver(page, `${floor}: working days later`, "-1");
    await expect.poll(after(1), slow).toMatchObject({ lag: -1 });
    await typeOver(page, `${floor}: working days later`, "0");
    await cell(page, `${floor}: kind of link`).selectOption("finish-to-start");
    await expect.poll(after(1), slow).toBe("dig");
    expect(await violations(page, "#work")).toEqual([]);

    // A lag that is more than a number is said, and stays; so does what else was said of a link.
    await cell(page, "Lay the tiles: name").focus();
    const tiles = page.locator("#task-tiles");
    await tiles.getByRole("button", { name: /^Details/ }).press("Enter");
    await tiles.getByText("1 to 4, likely 2 working days later").waitFor();
    await cell(page, "Lay the tiles waits for Dig the trench: kind of link").selectOption("start-to-finish");
    await typeOver(page, "Lay the tiles waits for Dig the trench: working days later", "3");
    const dug = { task: "dig", link: "start-to-finish", lag: 3, note: "same crane" };
    await expect.poll(after(3), slow).toEqual([{ task: "frame", lag: [1, 2, 4] }, dug]);
    await typeOver(
      page,
      "Lay the tiles: waits for these tasks, by name or id",
      "Dig the trench; Pour the floor; Raise the frame",
    );
    await expect.poll(after(3), slow).toEqual([dug, "pour", { task: "frame", lag: [1, 2, 4] }]);

    expect(await violations(page, "#work")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(readPlan(await text.inputValue()).problems).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });

  it("is refused at its choice where the plan cannot have it", async () => {
    const { page, close } = await served.open();
    await fillPlan(
      page,
      smallPlan.replace("after: dig", "after: [dig, { task: dig, link: finish-to-finish }]"),
    );
    await cell(page, "Pour the floor: name").focus();
    const row = page.locator("#task-pour");
    await row.getByRole("button", { name: /^Details/ }).press("Enter");
    const kind = cell(page, "Pour the floor waits for Dig the trench, link 2: kind of link");
    await kind.selectOption("finish-to-start");
    await row.locator(".message", { hasText: /twice.*“Kind of link”/ }).waitFor();
    expect(await kind.getAttribute("aria-invalid")).toBe("true");
    expect(await kind.inputValue()).toBe("finish-to-start");
    expect(await violations(page, "#work")).toEqual([]);
    // Chosen back, nothing waits.
    await kind.selectOption("finish-to-finish");
    await expect.poll(() => row.locator(".message").count(), slow).toBe(0);
    await close();
  });
});
