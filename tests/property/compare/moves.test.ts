import { describe, expect, it } from "vitest";
import { type Comparison, compare, type Plan } from "../../../packages/core/src/index.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { richDocument } from "../laws/richDocument.ts";
import { forecastOf, planOfDocument } from "../laws/runPlan.ts";
import { randomPair, strangers } from "./randomEdits.ts";

/**
 * The laws of a comparison. Efficiency (the parts sum to the whole) is an axiom of the averaging: Shapley (1953), "A
 * value for n-person games", recalled. That the two ends are the plans' own forecasts, and that what is no number moves
 * none, follows from the plan format. Random plans from fixed seeds; nothing is estimated, so there is no false alarm.
 */

function comparisonOf(older: Plan, newer: Plan, iterations: number): Comparison | undefined {
  return compare(older, newer, { iterations }).comparison;
}

function expectSum(comparison: Comparison, label: string): void {
  const { from, to, moves, difference } = comparison;
  for (const key of ["workingDays", "money"] as const) {
    const sum = moves.reduce((total, move) => total + move[key], 0);
    const size = Math.max(1, Math.abs(from[key]), Math.abs(to[key]));
    expect(Math.abs(to[key] - from[key] - sum), `${key}, ${label}`).toBeLessThan(1e-9 * size);
    expect(difference[key], label).toBe(to[key] - from[key]);
  }
}

describe("moves between random plans", () => {
  it("add up to the difference to 1e-9, and the ends are the two forecasts, to the bit", () => {
    let compared = 0;
    let moved = 0;
    for (let seed = 1; seed <= 24; seed++) {
      const { older, newer } = randomPair(seed, 4);
      const [was, is] = [planOfDocument(older), planOfDocument(newer)];
      const comparison = comparisonOf(was, is, 40);
      if (comparison === undefined) continue;
      compared++;
      if (comparison.moves.some(({ workingDays, money }) => workingDays !== 0 || money !== 0)) moved++;
      expectSum(comparison, `seed ${seed}`);
      const { seed: draws } = is;
      const { committed } = forecastOf(newer, { iterations: 40 });
      const before = forecastOf(older, { iterations: 40, seed: draws }).committed;
      expect(comparison.to, `new, seed ${seed}`).toMatchObject({
        date: committed.date,
        day: committed.day,
        workingDays: committed.workingDays,
        cost: committed.cost,
      });
      expect(comparison.from, `old, seed ${seed}`).toMatchObject({ date: before.date, cost: before.cost });
    }
    expect(compared).toBeGreaterThan(18);
    expect(moved).toBeGreaterThan(10);
  });

  it("add up where the two plans have nothing in common but words", () => {
    let compared = 0;
    for (let seed = 1; seed <= 3; seed++) {
      const { older, newer } = strangers(seed);
      const comparison = comparisonOf(planOfDocument(older), planOfDocument(newer), 12);
      if (comparison === undefined) continue;
      compared++;
      expectSum(comparison, `seed ${seed}`);
      expect(comparison.moves.length, `seed ${seed}`).toBeLessThanOrEqual(12);
    }
    expect(compared).toBeGreaterThan(1);
  });

  it("of an edit alone are the whole difference", () => {
    let single = 0;
    for (let seed = 300; seed < 330; seed++) {
      const { older, newer } = randomPair(seed, 1);
      const comparison = comparisonOf(planOfDocument(older), planOfDocument(newer), 24);
      if (comparison?.moves.length !== 1) continue;
      single++;
      const [move] = comparison.moves;
      expect(move?.workingDays, `seed ${seed}`).toBe(comparison.difference.workingDays);
      expect(move?.money, `seed ${seed}`).toBe(comparison.difference.money);
    }
    expect(single).toBeGreaterThan(10);
  });
});

/** Every list in another order, lists within lists included. */
function shuffled(value: unknown, rng: () => number): unknown {
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item === "number")) return value;
    return value
      .map((item) => ({ item: shuffled(item, rng), at: rng() }))
      .sort((a, b) => a.at - b.at)
      .map(({ item }) => item);
  }
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, item]) => [key, shuffled(item, rng)]),
  );
}

/** Another name, a note and an owner wherever the format has room for them. */
function retold(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(retold);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).map(([key, item]) => {
    if (key === "title" || key === "statement" || key === "action") return [key, `${item}, retold`];
    return [key, key === "name" && "id" in value ? `${item}, retold` : retold(item)];
  });
  return Object.fromEntries(
    "id" in value && "name" in value ? [...entries, ["note", "Told anew."]] : entries,
  );
}

describe("what is no number", () => {
  it("moves nothing, to the bit: another order of the file", () => {
    for (let seed = 1; seed <= 25; seed++) {
      const document = richDocument(seed);
      const other = planOfDocument(shuffled(document, seededRng(seed)));
      const comparison = comparisonOf(planOfDocument(document), other, 16);
      if (comparison === undefined) continue;
      expect(comparison.moves, `seed ${seed}`).toEqual([]);
      expect(comparison.difference, `seed ${seed}`).toEqual({ workingDays: 0, money: 0 });
      expect(comparison.to, `seed ${seed}`).toEqual(comparison.from);
      // "`responsible` (default: its first person)": that order says who it is, and no number.
      const others = comparison.alsoChanged.filter((text) => !text.endsWith(": who is responsible"));
      expect(others, `seed ${seed}`).toEqual([]);
    }
  });

  it("moves nothing, to the bit: names and notes, which are listed apart", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const document = richDocument(seed);
      const comparison = comparisonOf(planOfDocument(document), planOfDocument(retold(document)), 16);
      if (comparison === undefined) continue;
      expect(comparison.moves, `seed ${seed}`).toEqual([]);
      expect(comparison.difference, `seed ${seed}`).toEqual({ workingDays: 0, money: 0 });
      expect(comparison.alsoChanged.length, `seed ${seed}`).toBeGreaterThan(3);
    }
  });

  it("moves nothing: ids that were renamed with `was`", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const document = richDocument(seed);
      const comparison = comparisonOf(planOfDocument(document), planOfDocument(renamed(document)), 16);
      if (comparison === undefined) continue;
      expect(comparison.moves, `seed ${seed}`).toEqual([]);
      expect(comparison.difference, `seed ${seed}`).toEqual({ workingDays: 0, money: 0 });
      expect(comparison.alsoChanged.join(), `seed ${seed}`).toContain("has the id");
    }
  });
});

/** Every id with a q behind it, which sorts as before; `was` says what it was. */
function renamed(document: object): unknown {
  const ids = new Set<string>();
  const collect = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    if ("id" in value && typeof value.id === "string") ids.add(value.id);
    for (const item of Object.values(value)) collect(item);
  };
  collect(document);
  const text = (value: string): string => {
    if (ids.has(value)) return `${value}-q`;
    return value.startsWith("cost:") ? `cost:${value.slice(5)}-q` : value;
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
