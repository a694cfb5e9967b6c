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
