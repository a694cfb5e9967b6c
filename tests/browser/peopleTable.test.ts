import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { namedBy } from "../../apps/notebook/src/plan/namedBy.ts";
import { awayCell, readAway } from "../../apps/notebook/src/plan/readAway.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";

// Rules of this project's own, common practice, no source.
describe("absences in a cell", () => {
  it("are read as they are shown, and keep their reasons", () => {
    const stated = [
      { from: "2027-08-16", to: "2027-08-20", why: "Leave" },
      { from: "2027-09-03", to: "2027-09-03", share: 0.5 },
    ];
    const text = `format: 1\ntitle: T\nstart: 2027-01-04\npeople: { id: ada, name: Ada, away: ${JSON.stringify(stated)} }\ntasks: { id: dig, name: Dig, duration: 2 }\n`;
    const away = readPlan(text).plan?.people[0]?.away ?? [];
    expect(awayCell(away)).toBe("16 Aug 2027 to 20 Aug 2027; 3 Sep 2027");
    expect(readAway(awayCell(away), stated)).toEqual({ value: stated });
    expect(readAway("2027-09-03; 1 Oct 2027 – 2 Oct 2027", stated)).toEqual({
      value: [stated[1], { from: "2027-10-01", to: "2027-10-02" }],
    });
    expect(readAway("  ", stated)).toEqual({ value: undefined });
  });

  it("that are no dates, or end before they begin, are told", () => {
    expect(readAway("next week", undefined)).toMatchObject({ words: expect.stringMatching(/not a date/) });
    expect(readAway("20 Aug 2027 to 16 Aug 2027", undefined)).toMatchObject({
      words: expect.stringMatching(/ends before it begins/),
    });
  });
});

describe("where somebody is named", () => {
  it("is told by part of the plan; nowhere is nothing", () => {
    const stated = {
      people: [{ id: "ada", name: "Ada" }],
      tasks: [
        { id: "dig", people: ["ada", { id: "bob" }] },
        { id: "pour", responsible: "ada" },
      ],
      risks: [{ id: "rain", owner: "ada" }],
    };
    expect(namedBy(stated, "ada")).toBe("tasks (2), risks (1)");
    expect(namedBy(stated, "eve")).toBeUndefined();
  });
});

// Common practice, no source: what stands in one row of a table stands on one line.
describe("a row of a list", () => {
  const served = servedPage();

  it("has its texts, figures and choices, and the rules below them, level", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, smallPlan);
    const found = await page.evaluate(() => {
      /** Where the rule of a field is, and the middle of the line of its words. */
      const measure = (one: Element): { rule: number; middle: number } => {
        const { top, bottom } = one.getBoundingClientRect();
        const [above, below, line] = ["padding-top", "padding-bottom", "line-height"].map((name) =>
          Number.parseFloat(getComputedStyle(one).getPropertyValue(name)),
        );
        // A text begins at the top of its field, in a field of one line the words stand in its middle.
        const middle =
          one instanceof HTMLTextAreaElement
            ? top + (above ?? 0) + (line ?? 0) / 2
            : (top + (above ?? 0) + bottom - 1 - (below ?? 0)) / 2;
        return { rule: bottom, middle };
      };
      return [...document.querySelectorAll("#people .list-table tbody tr[data-item]")].flatMap((row) => {
        const fields = [...row.querySelectorAll("td:not(.of) > :is(.field, select)")];
        if (!fields.some((one) => one.matches(".number"))) return [];
        const all = fields.map(measure);
        const apart = (values: number[]): number => Math.max(...values) - Math.min(...values);
        return [
          {
            kinds: new Set(fields.map(({ localName }) => localName)).size,
            rules: apart(all.map(({ rule }) => rule)),
            middles: apart(all.map(({ middle }) => middle)),
          },
        ];
      });
    });
    expect(found.map(({ kinds }) => kinds)).toEqual([2, 2, 3]);
    for (const { rules, middles } of found) {
      expect(rules).toBeLessThan(0.25);
      expect(middles).toBeLessThan(0.25);
    }
    await close();
  });
});
