import { readPlan } from "@leeway/core";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import { dayKinds } from "../../apps/notebook/src/plan/dayKinds.ts";
import { dayOf, isoOf, monthOf, monthsLater, weekdayOf } from "../../apps/notebook/src/plan/days.ts";
import { listEdits, spanOf, withDays } from "../../apps/notebook/src/plan/daysOff.ts";
import { markDays, markWorkdays } from "../../apps/notebook/src/plan/markDays.ts";
import { withEdits } from "../../apps/notebook/src/plan/withEdits.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { answerDate, type Notebook, settled } from "./support/notebook.ts";
import { planText } from "./support/planText.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

const first = dayOf("2027-02-01");
const seed = 20270201;

const entry = fc
  .record({
    from: fc.integer({ min: 0, max: 40 }),
    length: fc.integer({ min: 0, max: 6 }),
    kind: fc.constantFrom("date", "range", "named", "part"),
  })
  .map(({ from, length, kind }): unknown => {
    const dates = { from: isoOf(first + from), to: isoOf(first + from + length) };
    if (kind === "date") return dates.from;
    if (kind === "range") return dates;
    return kind === "named" ? { ...dates, name: "Fair" } : { ...dates, share: 0.5 };
  });
const lists = fc.array(entry, { maxLength: 5 });
const ranges = fc
  .tuple(fc.integer({ min: 0, max: 45 }), fc.integer({ min: 0, max: 8 }))
  .map(([from, length]) => ({ from: first + from, to: first + from + length }));

/** The days that a list takes whole, counted one by one. */
function wholeDays(list: readonly unknown[]): Set<number> {
  const days = new Set<number>();
  for (const one of list) {
    if (typeof one === "object" && one !== null && "share" in one) continue;
    const span = spanOf(one);
    for (let day = span?.from ?? 1; day <= (span?.to ?? 0); day++) days.add(day);
  }
  return days;
}

// Sets of days, counted one by one; what the text says by the YAML library.
describe("days off in a plan's text", () => {
  it("marking adds exactly these days, freeing takes exactly these away", () => {
    fc.assert(
      fc.property(lists, ranges, fc.boolean(), (list, { from, to }, off) => {
        const before = wholeDays(list);
        const after = wholeDays(withDays(list, from, to, off));
        for (let day = first - 1; day < first + 60; day++) {
          const inside = day >= from && day <= to;
          expect(after.has(day)).toBe(inside ? off : before.has(day));
        }
        // Half an absence does not become a whole one.
        const parts = (entries: readonly unknown[]) =>
          entries.filter((one) => typeof one === "object" && one !== null && "share" in one);
        if (off) expect(parts(withDays(list, from, to, off))).toEqual(parts(list));
      }),
      { seed, numRuns: 120 },
    );
  });

  it("the edits say in the text what they make of its data", () => {
    fc.assert(
      fc.property(lists, ranges, fc.boolean(), (list, { from, to }, off) => {
        const away = list.length === 0 ? "" : `, away: ${JSON.stringify(list)}`;
        const text = `title: T # kept\npeople:\n  - { id: ann, name: Ann${away} }\n`;
        const stated = parse(text);
        const next = withDays(list, from, to, off);
        const edits = listEdits(stated, "people[0].away", next);
        const made = applyEdits(text, edits);
        expect(made.problems).toEqual([]);
        expect(parse(made.text).people[0].away ?? []).toEqual(next);
        expect(made.text).toContain("# kept");
        if (edits.length > 0) {
          const meant = withEdits(stated, edits);
          if (meant !== undefined) expect(meant).toEqual(parse(made.text));
        }
      }),
      { seed, numRuns: 50 },
    );
  });

  // The platform's own UTC arithmetic.
  it("dates, weekdays and months are those of the calendar", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -25_000, max: 376_000 }),
        fc.integer({ min: -30, max: 30 }),
        (day, months) => {
          const date = new Date(day * 86_400_000);
          expect(weekdayOf(day)).toBe((date.getUTCDay() + 6) % 7);
          expect(dayOf(isoOf(day))).toBe(day);
          const later = new Date(monthsLater(day, months) * 86_400_000);
          const whole = date.getUTCFullYear() * 12 + date.getUTCMonth() + months;
          expect(later.getUTCFullYear() * 12 + later.getUTCMonth()).toBe(whole);
          const { length } = monthOf(monthsLater(day, months));
          expect(later.getUTCDate()).toBe(Math.min(date.getUTCDate(), length));
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  it("the plan gets a calendar of its own where it had the one that cannot change", () => {
    const { plan } = readPlan(smallPlan);
    if (plan === undefined) throw new Error("The plan does not read.");
    const day = dayOf("2027-02-04");
    const made = markDays(plan, parse(smallPlan), { calendar: "weekdays" }, { from: day, to: day }, true);
    if ("refused" in made) throw new Error(made.refused);
    const next = readPlan(applyEdits(smallPlan, made.edits).text).plan;
    expect(next?.calendar).toBe("project");
    if (next === undefined) return;
    const kind = dayKinds(next, { calendar: "project" });
    expect([kind(day).kind, kind(day + 1).kind, kind(day + 2).kind]).toEqual(["holiday", "work", "rest"]);
    const week = markWorkdays(next, parse(applyEdits(smallPlan, made.edits).text), "project", ["sat"]);
    expect(week).toMatchObject({ edits: [{ path: "calendars.project.workdays", value: ["sat"] }] });
    expect(markWorkdays(next, {}, "project", [])).toHaveProperty("refused");
  });
});

// The date grid of the WAI-ARIA Authoring Practices: one stop of the Tab key, arrows by day and week, Home and End in
// the week, Page Up and Down by month and with Shift by year. Recalled from memory.
describe("the calendar on the page", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
    await fillPlan(notebook.page, smallPlan);
  });

  const text = () => planText(notebook.page);
  const focused = () =>
    notebook.page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");
  const day = (name: string) => notebook.page.locator("leeway-calendar").getByRole("button", { name });
  const told = (words: RegExp) =>
    notebook.page.locator("leeway-calendar .rows-told", { hasText: words }).waitFor();

  it("goes by the keys of a date grid", async () => {
    const { page } = notebook;
    await day("Monday 1 February 2027").focus();
    for (const [key, at] of [
      ["ArrowRight", "Tuesday 2 February 2027"],
      ["ArrowDown", "Tuesday 9 February 2027"],
      ["End", "Sunday 14 February 2027"],
      ["Home", "Monday 8 February 2027"],
      ["ArrowLeft", "Sunday 7 February 2027"],
      ["ArrowUp", "Sunday 31 January 2027"],
      ["PageDown", "Sunday 28 February 2027"],
      ["Shift+PageDown", "Monday 28 February 2028"],
      ["Shift+PageUp", "Sunday 28 February 2027"],
      ["PageUp", "Thursday 28 January 2027"],
    ] as const) {
      await page.keyboard.press(key);
      await expect.poll(focused).toContain(at);
    }
    expect(await page.locator("#calendar-month").textContent()).toBe("January 2027");
    expect(await page.locator("leeway-calendar [role=grid] button[tabindex='0']").count()).toBe(1);
    await page.keyboard.press("PageDown");
    await expect.poll(focused).toContain("Sunday 28 February 2027, no working day of the week");
  });

  it("a day off moves the answer, and Undo takes it back in one step", async () => {
    const { page } = notebook;
    const before = await text();
    const date = await answerDate(page);
    await day("Monday 15 February 2027").focus();
    await page.keyboard.press("Enter");
    await told(/Mon 15 Feb 2027 is a day off/);
    expect(parse(await text()).calendars).toEqual({
      project: { like: "weekdays", holidays: ["2027-02-15"] },
    });
    expect(await day("Monday 15 February 2027, day off").getAttribute("aria-pressed")).toBe("true");
    // A whole week, by Shift and the arrows: the plan finishes later.
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("Shift+ArrowRight");
    await expect.poll(() => page.locator("#calendar-day").textContent()).toContain("3 days");
    expect(await page.locator("leeway-calendar [aria-selected=true]").count()).toBe(3);
    await page.keyboard.press("Enter");
    await told(/Mon 15 Feb 2027 to Wed 17 Feb 2027 are days off/);
    expect(parse(await text()).calendars.project.holidays).toEqual([
      { from: "2027-02-15", to: "2027-02-17" },
    ]);
    await settled(page);
    expect(await answerDate(page)).not.toBe(date);

    // Why: written beside the days, and said with them.
    await page.getByLabel("Mon 15 Feb 2027 to Wed 17 Feb 2027: why").fill("Village fair");
    await page.keyboard.press("Enter");
    await expect.poll(() => day("Tuesday 16 February 2027, day off: Village fair").count()).toBe(1);
    // The middle becomes a working day: the reason stays with both ends.
    await day("Tuesday 16 February 2027").click();
    await told(/Tue 16 Feb 2027 is no longer off/);
    expect(parse(await text()).calendars.project.holidays).toEqual([
      { from: "2027-02-15", name: "Village fair" },
      { from: "2027-02-17", name: "Village fair" },
    ]);
    await day("Saturday 20 February 2027").click();
    await told(/stays as it is: this calendar holds no work on that day/);
    for (const _ of [1, 2, 3, 4]) await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(text).toBe(before);
    await settled(page);
    expect(await answerDate(page)).toBe(date);
  });

  it("a person's days away, from one click to another with Shift", async () => {
    const { page } = notebook;
    await page.getByLabel("Whose days").selectOption({ label: "Ann Quill" });
    await day("Thursday 18 February 2027").click();
    await told(/Thu 18 Feb 2027 is away/);
    await day("Tuesday 23 February 2027").click({ modifiers: ["Shift"] });
    await told(/Thu 18 Feb 2027 to Tue 23 Feb 2027 are away/);
    const [ann] = parse(await text()).people;
    expect(ann.away).toEqual([{ from: "2027-02-18", to: "2027-02-23" }]);
    expect(await day("Saturday 20 February 2027").getAttribute("aria-label")).toContain("away");
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await violations(page, "#calendar")).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    }
    expect(notebook.troubles).toEqual([]);
  });
});
