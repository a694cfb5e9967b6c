import { describe, expect, it } from "vitest";
import type { RandomPlanOptions } from "../../oracle/randomPlan.ts";
import { differences } from "./differences.ts";
import { richDocument } from "./richDocument.ts";
import { forecastOf, runOf } from "./runPlan.ts";

/**
 * "`was: old id` (after renaming, keeps its draws ...)" (plan format 1, "Conventions"). Random plans from printed
 * seeds; the numbers have to be the same, so there is no false alarm.
 */

/** Renames every task, risk, assumption, response and overhead, `was` added; people too, who draw nothing. */
function renamed(document: object, rename: (id: string) => string): unknown {
  const ids = new Set<string>();
  const collect = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    if ("id" in value && typeof value.id === "string") ids.add(value.id);
    for (const item of Object.values(value)) collect(item);
  };
  collect(document);
  const text = (value: string): string => {
    if (ids.has(value)) return rename(value);
    return value.startsWith("cost:") ? `cost:${rename(value.slice(5))}` : value;
  };
  const change = (value: unknown): unknown => {
    if (typeof value === "string") return text(value);
    if (Array.isArray(value)) return value.map(change);
    if (typeof value !== "object" || value === null) return value;
    const entries = Object.entries(value).map(([key, item]) => [key, change(item)]);
    const isItem = "id" in value && ("name" in value || "statement" in value || "action" in value);
    return Object.fromEntries(isItem ? [...entries, ["was", value.id]] : entries);
  };
  return change(document);
}

/** The forecast with every id as it was before, tasks sorted by it. */
function numbersOf(document: object, back: (text: string) => string) {
  const { plan, ...rest } = forecastOf(document, { iterations: 60 });
  const restored: unknown = JSON.parse(back(JSON.stringify({ ...rest, title: plan.title })));
  return restored;
}

describe("renaming with `was`", () => {
  it("changes no number, to the bit, where the new ids sort as the old ones", () => {
    let compared = 0;
    for (let seed = 100; seed < 140; seed++) {
      const document = richDocument(seed);
      if (runOf(document, { iterations: 60 }) === undefined) continue;
      compared++;
      const after = numbersOf(Object(renamed(document, (id) => `${id}-q`)), (text) =>
        text.replaceAll("-q", ""),
      );
      const before = numbersOf(document, (text) => text);
      expect(differences(after, before), `seed ${seed}`).toEqual([]);
    }
    expect(compared).toBeGreaterThan(30);
  });

  // Sums run in id order, ties of placing go by id, slots of a group and the matrix of correlations stand in id
  // order: so people, groups and correlations are left out here, and numbers may differ by rounding.
  it("changes no number beyond rounding where the new ids sort the other way", () => {
    const options: RandomPlanOptions = { people: false };
    const flip = (id: string) =>
      [...id].map((c) => (/[a-z]/.test(c) ? String.fromCharCode(219 - c.charCodeAt(0)) : c)).join("");
    let compared = 0;
    for (let seed = 200; seed < 240; seed++) {
      const { correlations: _, ...document } = richDocument(seed, options);
      if (JSON.stringify(document).includes('"group"')) continue;
      if (runOf(document, { iterations: 60 }) === undefined) continue;
      compared++;
      const summary = (of: object) => {
        const { finish, cost, committed, contingency, chance, intervals } = forecastOf(of, {
          iterations: 60,
        });
        return { finish, cost, committed, contingency, chance, intervals: intervals.map(({ p50 }) => p50) };
      };
      expect(differences(summary(Object(renamed(document, flip))), summary(document), 1e-9)).toEqual([]);
    }
    expect(compared).toBeGreaterThan(15);
  });

  it("draws anew without `was`", () => {
    const plan = (keys: object) => ({
      format: 1,
      title: "Renamed",
      start: "2027-02-01",
      tasks: { name: "A", duration: [2, 5, 20], ...keys },
    });
    const mean = (keys: object) => forecastOf(plan(keys), { iterations: 50 }).finish.mean;
    expect(mean({ id: "b", was: "a" })).toBe(mean({ id: "a" }));
    expect(mean({ id: "b" })).not.toBe(mean({ id: "a" }));
  });
});
