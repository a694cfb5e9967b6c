import { readPlan } from "@leeway/core";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import type { Edit } from "../../apps/notebook/src/plan/edit.ts";
import { findTasks } from "../../apps/notebook/src/plan/findTasks.ts";
import { movedPending } from "../../apps/notebook/src/plan/movedPending.ts";
import { idsIn, newId } from "../../apps/notebook/src/plan/newId.ts";
import { pasteTasks } from "../../apps/notebook/src/plan/pasteTasks.ts";
import { readBlock } from "../../apps/notebook/src/plan/readBlock.ts";
import { removeTask } from "../../apps/notebook/src/plan/removeTask.ts";
import { withEdits } from "../../apps/notebook/src/plan/withEdits.ts";
import { exampleTexts } from "./support/exampleTexts.ts";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const remarks = (text: string): string[] => (text.match(/#.*/g) ?? []).sort();

// The published format: a file written back keeps its comments and order. What is meant is told by the YAML library.
describe("rows added, taken away and moved in the text of a plan", () => {
  it.each(exampleTexts)("say in %s what they make of its data, and keep every remark", (_name, text) => {
    const { tasks } = parse(text);
    const item = { id: "new-one", name: "New: one, with a comma", duration: [1, 2, 4] };
    const more = { id: "new-two", name: "New two", duration: 3, after: ["new-one"] };
    const last = tasks.length - 1;
    const cases: Edit[][] = [
      ...[0, 1, Math.floor(last / 2), last, last + 1].map((add) => [{ path: "tasks", value: item, add }]),
      [
        { path: "tasks", value: item, add: 2 },
        { path: "tasks", value: more, add: 3 },
      ],
      [
        { path: "tasks[1].name", value: "Another name" },
        { path: "tasks", value: item, add: "last" },
        { path: "tasks", value: more, add: "last" },
      ],
      ...[0, 1, last - 1].map((swap) => [{ path: "tasks", value: undefined, swap }]),
      ...[
        [0, last],
        [last, 1],
        [1, 4],
      ].map(([swap = 0, to = 0]) => [{ path: "tasks", value: undefined, swap, to }]),
    ];
    for (const edits of cases) {
      const made = applyEdits(text, edits);
      expect(made.problems).toEqual([]);
      expect(parse(made.text)).toEqual(withEdits(parse(text), edits));
      expect(remarks(made.text)).toEqual(remarks(text));
      expect(parse(made.text).tasks).not.toEqual(tasks);
    }
    const gone = [{ path: `tasks[${last}]`, value: undefined }];
    expect(parse(applyEdits(text, gone).text).tasks).toEqual(tasks.slice(0, -1));
    expect(withEdits(parse(text), gone)).toEqual(parse(applyEdits(text, gone).text));
  });
});

// The published format: one item may stand where a list is meant. What is meant is told by the YAML library. An entry
// whose data is not known so is read from its text before it is computed, which takes three times as long.
describe("an estimate in the register", () => {
  it.each(exampleTexts)(
    "is known at once in %s, also where an entry says its one impact without a list",
    (_name, text) => {
      const stated = parse(text);
      for (const list of ["risks", "assumptions"]) {
        for (const [at, entry] of (stated[list] ?? []).entries()) {
          const impacts = [entry.impacts ?? []].flat();
          for (const [i, impact] of impacts.entries()) {
            for (const key of ["delay", "cost"].filter((name) => name in impact)) {
              const edits = [{ path: `${list}[${at}].impacts[${i}].${key}`, value: [1, 2, 97] }];
              const made = applyEdits(text, edits);
              expect(made.problems).toEqual([]);
              expect(withEdits(stated, edits)).toEqual(parse(made.text));
              expect(withEdits(stated, edits)).not.toEqual(stated);
            }
          }
        }
      }
    },
  );
});

// Rules of this project's own, common practice, no source.
describe("a row's parts", () => {
  it.each(exampleTexts)(
    "every task of %s can be removed with its links, and the rest still reads",
    (_name, text) => {
      const stated = parse(text);
      for (const [at, task] of stated.tasks.entries()) {
        const removal = removeTask(stated, at);
        if ("refused" in removal) throw new Error(removal.refused);
        const made = applyEdits(text, removal.edits);
        expect(made.problems).toEqual([]);
        const { plan, problems } = readPlan(made.text);
        // What a task's absence itself makes wrong, such as a goal nobody serves, is a matter of `check`.
        expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
        expect(plan?.tasks.some(({ id }) => id === task.id)).toBe(false);
      }
    },
  );

  it("ids are made from names, small letters and hyphens, and never twice", () => {
    const taken = new Set(["build-the-wall"]);
    expect(newId("Build the wall!", taken, "task")).toBe("build-the-wall-2");
    expect(newId("Ärger mit Straße", taken, "task")).toBe("arger-mit-strasse");
    expect(newId("2. Aushub", taken, "task")).toBe("aushub");
    expect(newId("施工", taken, "task")).toBe("task");
    expect([...idsIn({ a: [{ id: "x", b: { id: "y" } }] })]).toEqual(["x", "y"]);
  });

  it("tasks are found by the part of a name that only one has", () => {
    const tasks = [
      { id: "dig", name: "Dig the pit" },
      { id: "pour", name: "Pour the floor" },
    ];
    expect(findTasks("dig the; FLOOR", tasks)).toEqual({ ids: ["dig", "pour"] });
    expect(findTasks("the", tasks)).toMatchObject({ words: expect.stringMatching(/2 names/) });
    expect(findTasks("paint", tasks)).toMatchObject({ words: expect.stringMatching(/No task/) });
  });

  it("entries that wait stay with their rows", () => {
    const entry = { cells: {}, words: "?" };
    const pending = new Map([
      ["tasks[1].name", entry],
      ["tasks[3].duration", entry],
      ["risks[1].probability", entry],
    ]);
    const after = (edit: Edit): string[] => [...movedPending(pending, [edit]).keys()];
    expect(after({ path: "tasks[1]", value: undefined })).toEqual([
      "tasks[2].duration",
      "risks[1].probability",
    ]);
    expect(after({ path: "tasks", value: {}, add: 2 })).toEqual([
      "tasks[1].name",
      "tasks[4].duration",
      "risks[1].probability",
    ]);
    expect(after({ path: "tasks", value: undefined, swap: 2 })).toContain("tasks[2].duration");
    expect(after({ path: "tasks", value: undefined, swap: 3, to: 0 })).toEqual([
      "tasks[2].name",
      "tasks[0].duration",
      "risks[1].probability",
    ]);
  });
});

describe("a block that is pasted", () => {
  const text =
    "format: 1\ntitle: T\nstart: 2027-01-04\ntasks:\n  - { id: dig, name: Dig, duration: [2, 3, 5] }\n";
  const read = readPlan(text).plan;
  if (read === undefined) throw new Error("the plan of the tests does not read");
  const plan = read;
  const paste = (block: string, row = 0, column = 0) => {
    const cells = readBlock(block);
    if ("words" in cells) throw new Error(cells.words);
    const made = pasteTasks(cells.rows, plan, parse(text), { row, column, at: 1, phase: undefined });
    return { ...made, after: readPlan(applyEdits(text, made.edits).text) };
  };

  it("fills from the cell on and adds what is longer", () => {
    const { after, waits } = paste("4\t6\t9\n", 0, 1);
    expect(after.plan?.tasks[0]?.duration).toMatchObject({ low: 4, likely: 6, high: 9 });
    expect(waits.size).toBe(0);
    const more = paste("Dig\t\t\t\nPour, slowly\t1\t2\t4\n").after.plan?.tasks[1];
    expect(more).toMatchObject({ id: "pour-slowly", duration: { low: 1, likely: 2, high: 4 } });
  });

  it("reads headings in any order, quoted commas, and links by name", () => {
    const { after, told } = paste(
      'Most likely,Task,Owner,Waits for\n3,"Pour, level",Ada,Dig\n8,Cure,Ada,"Pour, level"\n',
      1,
    );
    expect(after.problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(after.plan?.tasks.map(({ id, after: links }) => [id, links.map(({ task }) => task)])).toEqual([
      ["dig", []],
      ["pour-level", ["dig"]],
      ["cure", ["pour-level"]],
    ]);
    expect(told).toContain("Not read: “Owner”");
  });

  it("takes a list of names as tasks of one day, and says so; a sentence is not torn at its commas", () => {
    const { after, told } = paste("- Order, then wait\n- Fit it\n", 1);
    expect(after.plan?.tasks.map(({ name }) => name)).toEqual(["Dig", "Order, then wait", "Fit it"]);
    expect(told).toMatch(/2 tasks came without a duration .* 1 working day/);
  });

  it("tells every cell it cannot read at its place, the decimal comma too, and takes the rest", () => {
    const { after, waits } = paste("Dig\t9\t3\t5\nPour\t1\t2,5\t4\nCure\t1\t2\t3\n");
    expect([...waits.keys()]).toEqual(["tasks[0].duration", "tasks[1].duration"]);
    expect(waits.get("tasks[1].duration")).toMatchObject({
      cells: { likely: "2,5" },
      words: expect.stringMatching(/2\.5 rather than 2,5/),
    });
    expect(after.plan?.tasks.map(({ name }) => name)).toEqual(["Dig", "Pour", "Cure"]);
  });
});

describe("rows on the page", () => {
  const served = servedPage();

  const plan = (page: Page): Promise<string> => page.locator("#plan-text").inputValue();
  const focused = (page: Page): Promise<string | null | undefined> =>
    page.evaluate(() => document.activeElement?.getAttribute("aria-label"));

  it("are added, moved and removed by keyboard, each in one step of undo", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const told = page.locator("leeway-tasks .rows-told");
    const before = await plan(page);
    await cell(page, "Opening day: name").focus();
    await page.keyboard.press("Enter");
    await page.locator(".new-row").waitFor();
    await page.keyboard.type("Thank everybody");
    await page.keyboard.press("Enter");
    expect(await focused(page)).toBe("New task: likely, in working days");
    await page.keyboard.type("3");
    await page.keyboard.press("Enter");
    await told.filter({ hasText: "Added “Thank everybody”" }).waitFor();
    expect(await focused(page)).toBe("New task: name");
    await page.keyboard.press("Escape");
    await settled(page);
    expect(parse(await plan(page)).tasks.at(-1)).toEqual({
      id: "thank-everybody",
      name: "Thank everybody",
      phase: "Opening",
      duration: 3,
    });

    const added = cell(page, "Thank everybody: name");
    await added.focus();
    await page.keyboard.press("Alt+ArrowUp");
    await told.filter({ hasText: "Moved “Thank everybody” up" }).waitFor();
    expect(await focused(page)).toBe("Thank everybody: name");
    await settled(page);
    expect(parse(await plan(page)).tasks.at(-2).id).toBe("thank-everybody");

    await page.getByRole("button", { name: /^Remove\s*: Thank everybody/ }).click();
    await told.filter({ hasText: "Removed “Thank everybody”" }).waitFor();
    await settled(page);
    expect(await plan(page)).toBe(before);
    for (let step = 0; step < 3; step++) {
      await page.keyboard.press("Control+Z");
      await settled(page);
    }
    expect(await plan(page)).toBe(before);
    expect(notebook.troubles).toEqual([]);
    await notebook.close();
  });

  it.each([
    ["leeway-tasks .adds-button", "New task: name"],
    ["leeway-register [data-adds=risks]", "New risk: what may happen"],
    ["leeway-people [data-adds]", "New person: name"],
  ])("of %s have the focus before the next key can come", async (button, field) => {
    const notebook = await served.open();
    const { page } = notebook;
    const adds = page.locator(button).first();
    await adds.scrollIntoViewIfNeeded();
    // In one turn of the page: nothing is drawn later that a quick hand would have to wait for.
    const asked = await adds.evaluate((asks: HTMLElement) => {
      asks.click();
      return document.activeElement?.getAttribute("aria-label");
    });
    expect(asked).toBe(field);
    await page.keyboard.type("Keys");
    expect(await cell(page, field).inputValue()).toBe("Keys");
    await notebook.close();
  });

  it("cover no row with what was told of them, and it goes once the reader goes on elsewhere", async () => {
    const notebook = await served.open({ viewport: { width: 1280, height: 600 } });
    const { page } = notebook;
    const told = page.locator(".rows-told", { hasText: "Added" });
    await page.locator("#work [data-adds]").first().click();
    await cell(page, "New task: name").fill("Thank everybody");
    await cell(page, "New task: likely, in working days").fill("3");
    await page.keyboard.press("Enter");
    await told.waitFor();
    await page.keyboard.press("Escape");
    const covered = await page.evaluate(() => {
      const boxes = (of: string) =>
        [...document.querySelectorAll(of)].map((one) => one.getBoundingClientRect());
      const rows = boxes("#work tr[data-item]");
      return boxes("#work .rows-told").filter(({ top, bottom }) =>
        rows.some((row) => Math.min(row.bottom, bottom) - Math.max(row.top, top) > 1),
      ).length;
    });
    expect(covered).toBe(0);
    await page.locator("[data-adds=people]").click();
    await told.waitFor({ state: "detached" });
    await cell(page, "New person: name").fill("Ada Fern");
    await page.keyboard.press("Enter");
    await told.filter({ hasText: "Ada Fern" }).waitFor();
    expect(await page.locator(".rows-told", { hasText: /Added/ }).count()).toBe(1);
    await cell(page, "New person: name").fill("B");
    await told.waitFor({ state: "detached" });
    await notebook.close();
  });

  it("of the register: a risk by the name of its task, and a response to it", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const told = page.locator("leeway-register .rows-told");
    const before = await plan(page);
    await page.getByRole("button", { name: "Add a risk" }).click();
    await cell(page, "New risk: what may happen").fill("The lift breaks");
    await cell(page, "New risk: chance it happens, in per cent").fill("25");
    await cell(page, "New risk: delay: likely, in working days").fill("6");
    await cell(page, "New risk: task it delays, by name; several parted by semicolons").fill("strip");
    await page.keyboard.press("Enter");
    await told.filter({ hasText: "Added “The lift breaks”" }).waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: /^Add a response\s*to The lift breaks/ }).click();
    await cell(page, "New response: what can be done").fill("Hire a crane");
    await cell(page, "New response: costs, in EUR").fill("4,000");
    await page.keyboard.press("Enter");
    await told.filter({ hasText: "Added “Hire a crane”" }).waitFor();
    await settled(page);
    expect(parse(await plan(page)).risks.at(-1)).toEqual({
      id: "the-lift-breaks",
      name: "The lift breaks",
      probability: 0.25,
      impacts: { tasks: "strip-out", delay: 6 },
      responses: [{ id: "hire-a-crane", action: "Hire a crane", cost: 4000 }],
    });
    await page.keyboard.press("Escape");
    for (let step = 0; step < 2; step++) {
      await page.keyboard.press("Control+Z");
      await settled(page);
    }
    expect(await plan(page)).toBe(before);
    expect(notebook.troubles).toEqual([]);
    await notebook.close();
  });

  // A number pad may have no Enter, and a telephone has no Escape. Least size: WCAG 2.2, 2.5.8.
  it("are taken in and discarded by touch, as by Enter and Escape", async () => {
    const notebook = await served.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    const { page } = notebook;
    const before = await plan(page);
    const kinds: {
      opens: Locator;
      what: string;
      first: string;
      fill: Record<string, string>;
      missing: string;
      rest: Record<string, string>;
    }[] = [
      {
        opens: page.getByRole("button", { name: "Add a task to Opening" }),
        what: "new task",
        first: "New task: name",
        fill: { "New task: name": "Thank everybody" },
        missing: "New task: likely, in working days",
        rest: { "New task: likely, in working days": "3" },
      },
      {
        opens: page.getByRole("button", { name: "Add a risk" }),
        what: "new risk",
        first: "New risk: what may happen",
        fill: { "New risk: what may happen": "The lift breaks" },
        missing: "New risk: chance it happens, in per cent",
        rest: {
          "New risk: chance it happens, in per cent": "25",
          "New risk: delay: likely, in working days": "6",
          "New risk: task it delays, by name; several parted by semicolons": "strip",
        },
      },
      {
        opens: page.getByRole("button", { name: /^Add a response\s*to The lift breaks/ }),
        what: "new response",
        first: "New response: what can be done",
        fill: { "New response: costs, in EUR": "4000" },
        missing: "New response: what can be done",
        rest: { "New response: what can be done": "Hire a crane" },
      },
      {
        opens: page.locator('leeway-people [data-adds="people"]'),
        what: "new person",
        first: "New person: name",
        fill: {},
        missing: "New person: name",
        rest: { "New person: name": "Ida Holm" },
      },
    ];
    for (const { opens, what, first, fill, missing, rest } of kinds) {
      await opens.tap();
      expect(await focused(page)).toBe(first);
      const row = page.locator(".new-row");
      const add = row.getByRole("button", { name: `Add the ${what}`, exact: true });
      const discard = row.getByRole("button", { name: `Discard the ${what}`, exact: true });
      for (const button of [add, discard]) {
        const { width = 0, height = 0 } = (await button.boundingBox()) ?? {};
        expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
      }
      // What is said of the keys is so, and they are not all that there is.
      expect(await row.textContent()).toContain(
        "Enter, or going on to another row, adds it; Escape discards it.",
      );
      // Last among the stops of the row, in this order.
      const stops = await row
        .locator("input, button")
        .evaluateAll((all) => all.map((one) => one.getAttribute("aria-label")));
      expect(stops.slice(-2)).toEqual([`Add the ${what}`, `Discard the ${what}`]);
      for (const [label, text] of Object.entries(fill)) await cell(page, label).fill(text);
      await add.tap();
      await row.getByRole("alert").waitFor();
      expect(await focused(page)).toBe(missing);
      for (const [label, text] of Object.entries(rest)) await cell(page, label).fill(text);
      await add.tap();
      const named = fill[first] ?? rest[first] ?? "";
      await page.locator(".rows-told", { hasText: `Added “${named}”` }).waitFor();
      // The next one is offered, as after Enter.
      expect(await focused(page)).toBe(first);
      expect(await cell(page, first).inputValue()).toBe("");
      await cell(page, first).fill("Not this one");
      await discard.tap();
      await row.waitFor({ state: "detached" });
      expect(await page.evaluate(() => document.activeElement?.matches("[data-adds]"))).toBe(true);
      await settled(page);
      expect(await plan(page)).toContain(named);
      expect(await plan(page)).not.toContain("Not this one");
    }
    expect(await plan(page)).not.toBe(before);
    // By keyboard the buttons do the same, and Escape on them discards.
    await kinds[0]?.opens.press("Enter");
    await page.getByRole("button", { name: "Add the new task" }).press("Escape");
    await page.locator(".new-row").waitFor({ state: "detached" });
    await expect.poll(() => page.evaluate(() => document.activeElement?.matches("[data-adds]"))).toBe(true);
    expect(notebook.troubles).toEqual([]);
    await notebook.close();
  });
});
