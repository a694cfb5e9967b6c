import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import {
  moveToPhase,
  newPhase,
  phaseNeeded,
  phasesIn,
  renamePhase,
} from "../../apps/notebook/src/plan/phases.ts";
import { exampleTexts } from "./support/exampleTexts.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

function made(text: string, result: { edits: Parameters<typeof applyEdits>[1] } | { words: string }): string {
  if ("words" in result) throw new Error(result.words);
  const { text: next, problems } = applyEdits(text, result.edits);
  expect(problems).toEqual([]);
  expect(readPlan(next).problems.filter(({ severity }) => severity === "error")).toEqual([]);
  return next;
}

// The published format: where phases are given, a task's undeclared phase is an error. So whatever is done to phases has
// to leave a plan that reads, with every remark in it.
describe.each(exampleTexts)("phases of %s", (_name, text) => {
  const remarks = (of: string): string[] => (of.match(/#.*/g) ?? []).sort();
  it("are added, renamed wherever they are named, and tasks go from one to another", () => {
    const more = made(text, newPhase("Handing over", parse(text)));
    expect(phasesIn(parse(more))).toEqual([...phasesIn(parse(text)), "Handing over"]);
    const [first = "Handing over"] = phasesIn(parse(text));
    const renamed = made(more, renamePhase(first, "Another name", parse(more)));
    expect(phasesIn(parse(renamed))).not.toContain(first);
    expect(phasesIn(parse(renamed))).toContain("Another name");
    const { tasks } = parse(renamed);
    const at = tasks.length - 1;
    const moved = moveToPhase(at, "Another name", parse(renamed));
    const after = made(renamed, moved);
    expect(parse(after).tasks[moved.at]).toMatchObject({ id: tasks[at].id, phase: "Another name" });
    expect(parse(after).tasks).toHaveLength(tasks.length);
    expect(remarks(after)).toEqual(remarks(text));
  });
});

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

describe("a phase", () => {
  const stated = parse(smallPlan);
  it("that tasks belong to stays, and two of one name are refused", () => {
    expect(phaseNeeded("Ground", stated)).toMatch(/2 tasks belong/);
    expect(phaseNeeded("Nothing", stated)).toBeUndefined();
    expect(newPhase("roof", stated)).toMatchObject({ words: expect.stringMatching(/already/) });
    expect(renamePhase("Roof", "Ground", stated)).toMatchObject({ words: expect.stringMatching(/already/) });
    expect(renamePhase("Roof", " ", stated)).toMatchObject({ words: expect.stringMatching(/needs a name/) });
  });

  it("that is declared first declares those that tasks only name", () => {
    const bare = { tasks: [{ id: "a", phase: "One" }, { id: "b" }] };
    expect(newPhase("Two", bare)).toMatchObject({
      edits: [{ value: { name: "One" } }, { value: { name: "Two" } }],
    });
  });
});

describe("phases on the page, by keyboard", () => {
  const served = servedPage();

  it("are added and renamed, tasks are moved into them, and links are picked by name", async () => {
    const { page, troubles, close } = await served.open();
    const text = page.locator("#plan-text");
    await fillPlan(page, smallPlan);
    const inPlan = async () => parse(await text.inputValue());
    await cell(page, "New phase: name").focus();
    await page.keyboard.type("Handing over");
    await page.keyboard.press("Enter");
    await page.locator(".work .phase", { hasText: "Handing over" }).waitFor();

    await cell(page, "Lay the tiles: low, in working days").focus();
    const into = page.getByLabel("Phase of Lay the tiles");
    await into.selectOption("Handing over");
    await page.getByText("“Lay the tiles” now belongs to “Handing over”.").waitFor();
    await expect.poll(async () => (await inPlan()).tasks[3].phase, slow).toBe("Handing over");
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName), slow).toBe("SELECT");
    expect(await violations(page, "#work")).toEqual([]);

    await page.setViewportSize({ width: 390, height: 900 });
    await cell(page, "Name of the phase Handing over").focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("Last days");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await inPlan()).tasks[3].phase, slow).toBe("Last days");
    expect((await inPlan()).phases.map(({ name }: { name: string }) => name)).toEqual([
      "Ground",
      "Roof",
      "Last days",
    ]);

    const links = cell(page, "Lay the tiles: waits for these tasks, by name or id");
    await links.focus();
    await page.keyboard.press("End");
    await page.keyboard.type("; tren");
    await page.getByRole("option", { name: "Dig the trench" }).waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await inPlan()).tasks[3].after, slow).toEqual(["frame", "dig"]);
    expect(await links.inputValue()).toBe("Raise the frame; Dig the trench");
    expect(await violations(page, "#work")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(troubles).toEqual([]);
    await close();
  });
});
