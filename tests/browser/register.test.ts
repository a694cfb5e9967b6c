import { type RangeEstimate, readPlan, SHAPES } from "@leeway/core";
import type { Locator } from "playwright-core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { readLinksCell } from "../../apps/notebook/src/plan/linksEntry.ts";
import { newEffect } from "../../apps/notebook/src/plan/newEffect.ts";
import { reshape } from "../../apps/notebook/src/plan/reshape.ts";
import { partAt, suggestions, withPart } from "../../apps/notebook/src/plan/suggest.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

const tasks = [
  { id: "dig", name: "Dig the trench" },
  { id: "pour", name: "Pour the floor" },
  { id: "frame", name: "Raise the frame" },
];

// Rules of this project's own, common practice, no source.
/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

describe("names that are typed", () => {
  it("are suggested for the part the caret is in, those that begin so first", () => {
    expect(partAt("dig, po", 7)).toEqual({ from: 5, to: 7, part: "po" });
    expect(partAt("dig; po; x", 2)).toEqual({ from: 0, to: 3, part: "dig" });
    expect(suggestions("fr", tasks).map(({ id }) => id)).toEqual(["frame"]);
    expect(suggestions("the", tasks)).toHaveLength(3);
    expect(suggestions("", tasks)).toEqual([]);
    expect(withPart("dig, po", { from: 5, to: 7 }, "pour")).toEqual({ text: "dig, pour", caret: 9 });
  });

  it("make links, as ids do; a name that several have is asked back", () => {
    const known = new Set(tasks.map(({ id }) => id));
    const read = (text: string) => readLinksCell(text, "after", undefined, known, "tiles", tasks);
    expect(read("Raise the frame; dig")).toEqual({ edits: [{ path: "after", value: ["frame", "dig"] }] });
    expect(read("frame, the floor")).toEqual({ edits: [{ path: "after", value: ["frame", "pour"] }] });
    expect(read("the")).toMatchObject({ words: expect.stringMatching(/3 names/) });
    expect(read("dug")).toMatchObject({
      words: expect.stringMatching(/No task has the name or id “dug”/),
    });
    expect(readLinksCell("the trench", "after", undefined, known, "dig", tasks)).toMatchObject({
      words: expect.stringMatching(/cannot wait for itself/),
    });
  });
});

// The shapes and their bounds are those of the published format: a document with the new estimate must read.
describe("another shape", () => {
  it.each(SHAPES)("%s reads", (shape) => {
    const range: RangeEstimate = {
      kind: "range",
      low: 2,
      likely: 3,
      high: 8,
      shape: "pert",
      bounds: "extremes",
      unit: "days",
    };
    const duration = reshape(range, { shape }, [2, 3, 8]);
    const { plan, problems } = readPlan(
      JSON.stringify({
        format: 1,
        title: "T",
        start: "2027-01-04",
        tasks: [{ id: "dig", name: "Dig", duration }],
      }),
    );
    expect(problems).toEqual([]);
    expect(plan?.tasks[0]?.duration).toMatchObject({ shape, low: 2, high: 8 });
    const back = plan?.tasks[0]?.duration;
    if (back?.kind !== "range") throw new Error("no range");
    expect(reshape(back, { shape: "triangular" }, duration)).toMatchObject({
      shape: "triangular",
      low: 2,
      high: 8,
    });
  });
});

describe("a new effect", () => {
  it("says what it touches and what it does, or which of the two is missing", () => {
    const none = { tasks: "", low: "", likely: "", high: "", cost: "" };
    expect(newEffect({ ...none, likely: "3" }, tasks, "EUR")).toMatchObject({ cell: "tasks" });
    expect(newEffect({ ...none, tasks: "floor" }, tasks, "EUR")).toMatchObject({ cell: "likely" });
    expect(newEffect({ ...none, tasks: "floor; dig", cost: "1,200" }, tasks, "EUR")).toEqual({
      item: { tasks: ["pour", "dig"], cost: 1200 },
    });
  });
});

describe("the register on the page, by keyboard", () => {
  const served = servedPage();

  it("takes owner, dates, tasks by name, sums with their shape, and what a response does", async () => {
    const { page, troubles, close } = await served.open();
    const text = page.locator("#plan-text");
    await fillPlan(page, smallPlan);
    const rain = async () => parse(await text.inputValue()).risks[0];
    const type = (label: string, words: string) => typeOver(page, label, words);

    await page.locator("#entry-rain summary").focus();
    await page.keyboard.press("Enter");
    await cell(page, "A week of rain: add a task, by name").focus();
    await page.keyboard.type("tren");
    const option = page.getByRole("option", { name: "Dig the trench" });
    await option.waitFor();
    expect(await violations(page, "#register")).toEqual([]);
    await page.keyboard.press("ArrowDown");
    expect(await option.getAttribute("aria-selected")).toBe("true");
    await page.keyboard.press("Enter");
    await page.locator("#entry-rain .picked", { hasText: "Dig the trench" }).waitFor();
    await expect.poll(async () => (await rain()).impacts.tasks, slow).toEqual(["pour", "dig"]);
    expect(await text.inputValue()).toContain("# only the floor");
    // The focus is still where the next task would be typed, and it is empty.
    expect(await cell(page, "A week of rain: add a task, by name").inputValue()).toBe("");

    await type("A week of rain: cost: likely, in EUR", "500");
    await expect.poll(async () => (await rain()).impacts.cost, slow).toBe(500);
    await type("A week of rain: cost: likely, in EUR", "");
    await expect.poll(async () => (await rain()).impacts.cost, slow).toBeUndefined();
    await cell(page, "A week of rain: delay: shape").selectOption("triangular");
    await expect
      .poll(async () => (await rain()).impacts.delay, slow)
      .toMatchObject({ likely: 4, shape: "triangular" });
    await type("A week of rain: can happen until", "15 Mar 2027");
    await cell(page, "A week of rain: owner").selectOption("bo");
    await type("Rent a cover: of the effect remains, %", "40");
    await type("Rent a cover: costs: likely, in EUR", "350");
    await expect.poll(rain, slow).toMatchObject({
      owner: "bo",
      expires: "2027-03-15",
      responses: [{ id: "tarp", cost: 350, scale: 0.4 }],
    });

    // What cannot be read waits at its field, in words.
    await type("A week of rain: can happen until", "soon");
    const waits = cell(page, "A week of rain: can happen until");
    await page.locator("#entry-rain .message", { hasText: "not a date" }).waitFor();
    expect(await waits.getAttribute("aria-invalid")).toBe("true");
    await waits.focus();
    await page.keyboard.press("Escape");

    await page.setViewportSize({ width: 390, height: 900 });
    await page.getByRole("button", { name: "Add an effect of A week of rain" }).focus();
    await page.keyboard.press("Enter");
    await page.keyboard.type("frame");
    await page.keyboard.press("Enter");
    // Nothing was said of what it does: the cell that is missing has the focus.
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-cell"))).toBe("likely");
    expect(await violations(page, "#register")).toEqual([]);
    await page.keyboard.type("2");
    await page.keyboard.press("Enter");
    await expect
      .poll(async () => (await rain()).impacts, slow)
      .toMatchObject([{ tasks: ["pour", "dig"] }, { tasks: "frame", delay: 2 }]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(troubles).toEqual([]);
    await close();
  });

  // Common practice, no source: what belongs together stands together, whatever the width.
  it("has the button that adds a response close below the last, and what is done with a response beside it", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    await fillPlan(page, smallPlan);
    const response = page.locator("#entry-rain .response-line");
    const adds = page.locator("#entry-rain .adds-button");
    const boxOf = (one: Locator) => one.evaluate((found) => found.getBoundingClientRect().toJSON());
    const gaps: number[] = [];
    for (const width of [1280, 390, 320]) {
      await page.setViewportSize({ width, height: 844 });
      await adds.evaluate((one) => one.scrollIntoView({ block: "center", behavior: "instant" }));
      // From the row's own top: sections above may still grow.
      const place = async (): Promise<number> =>
        (await boxOf(adds)).top - (await boxOf(page.locator("#entry-rain"))).top;
      const before = await place();
      gaps.push((await boxOf(adds)).top - (await boxOf(response.locator(".response span"))).bottom);
      await response.getByRole("checkbox").focus();
      const tools = response.locator(".row-tools");
      await tools.waitFor();
      const [strip, words, button] = [
        await boxOf(tools),
        await boxOf(response.locator(".response span")),
        await boxOf(adds),
      ];
      expect(Math.abs((await place()) - before), `moved at ${width} px`).toBeLessThan(1.5);
      expect(strip.top >= words.bottom || strip.left >= words.right, `over the words at ${width} px`).toBe(
        true,
      );
      expect(strip.left >= button.right || strip.bottom <= button.top, `over the button at ${width} px`).toBe(
        true,
      );
      // Each can be pressed: nothing lies over its middle.
      for (const one of await tools.getByRole("button").all())
        expect(
          await one.evaluate((found) => {
            const { left, top, width: broad, height } = found.getBoundingClientRect();
            return found.contains(document.elementFromPoint(left + broad / 2, top + height / 2));
          }),
        ).toBe(true);
    }
    const [wide = 0, ...narrow] = gaps;
    for (const gap of narrow) expect(Math.abs(gap - wide)).toBeLessThan(6);
    await notebook.close();
  });

  it("leads from no response to where one is written, and says below the risks what was done to them", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    await fillPlan(page, smallPlan.slice(0, smallPlan.indexOf("risks:")));
    const register = page.locator("#register");
    const says = page.locator("#responses .way-on");
    // Asked for once it is in sight.
    const look = () => page.locator("#responses").evaluate((one) => one.scrollIntoView());
    await look();
    await expect.poll(() => says.textContent(), slow).toContain("Add a risk in the register");
    await says.getByRole("link").press("Enter");
    const heading = register.locator("h2 button").first();
    await expect.poll(() => heading.evaluate((one) => one === document.activeElement), slow).toBe(true);

    expect(await register.textContent()).toContain("No risk yet");
    await page.getByRole("button", { name: "Add a risk" }).press("Enter");
    expect(await register.textContent()).not.toContain("No risk yet");
    expect(await register.textContent()).toContain("No assumption yet");
    await page.keyboard.press("Escape");
    await expect.poll(() => register.textContent(), slow).toContain("No risk yet");

    await page.getByRole("button", { name: "Add a risk" }).press("Enter");
    await cell(page, "New risk: what may happen").fill("The lift breaks");
    await cell(page, "New risk: chance it happens, in per cent").fill("25");
    await cell(page, "New risk: delay: likely, in working days").fill("6");
    await cell(page, "New risk: task it delays, by name; several parted by semicolons").fill("frame");
    await page.keyboard.press("Enter");
    const told = register.getByText("Added “The lift breaks”.", { exact: true });
    await told.waitFor();
    const top = async (one: Locator): Promise<number> => (await one.boundingBox())?.y ?? Number.NaN;
    const assumptions = register.getByText("Assumptions: what the plan counts on", { exact: true });
    expect(await top(told)).toBeGreaterThan(await top(page.locator("#entry-the-lift-breaks")));
    expect(await top(told)).toBeLessThan(await top(assumptions));
    await page.keyboard.press("Escape");
    await look();
    await expect.poll(() => says.textContent(), slow).toContain("Add one below a risk or an assumption");
    await page.getByRole("button", { name: "Add an assumption" }).press("Enter");
    await cell(page, "New assumption: what the plan counts on").fill("The crane is free");
    await cell(page, "New assumption: chance it is wrong, in per cent").fill("10");
    await cell(page, "New assumption: delay: likely, in working days").fill("4");
    await cell(page, "New assumption: task it delays, by name; several parted by semicolons").fill("frame");
    await page.keyboard.press("Enter");
    const later = register.getByText("Added “The crane is free”.", { exact: true });
    await later.waitFor();
    expect(await top(later)).toBeGreaterThan(await top(assumptions));
    expect(await told.count()).toBe(0);
    expect(await violations(page, "#register")).toEqual([]);
    expect(notebook.troubles).toEqual([]);
    await notebook.close();
  });
});
