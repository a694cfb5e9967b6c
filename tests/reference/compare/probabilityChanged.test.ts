import { describe, expect, it } from "vitest";
import { compare, planFromData } from "../../../packages/core/src/index.ts";

/**
 * A network of five activities with discrete durations and two risks, constructed for this test (case "Plan + register
 * + time-dependent cost, then one assumption changed" of CASES.md; verified there by full enumeration, and enumerated
 * again here). The chance of K1 goes from 0.3 to 0.1: P80 of the finish goes from 12 to 11 days, of the cost from 340
 * to 335.
 */
const ITERATIONS = 10_000;
const network = {
  a: {
    durations: [
      [3, 0.5],
      [5, 0.5],
    ],
    after: [],
  },
  b: {
    durations: [
      [4, 0.7],
      [6, 0.3],
    ],
    after: [],
  },
  c: {
    durations: [
      [2, 0.6],
      [5, 0.4],
    ],
    after: ["a"],
  },
  d: {
    durations: [
      [3, 0.5],
      [4, 0.5],
    ],
    after: ["a", "b"],
  },
  e: {
    durations: [
      [1, 0.8],
      [2, 0.2],
    ],
    after: ["c", "d"],
  },
} as const;

function document(chance: number) {
  return {
    format: 1,
    title: "Five activities",
    start: "2027-03-01",
    calendar: "every-day",
    commitment: { confidence: 0.8, finishBy: "2027-03-11", budget: 320 },
    tasks: Object.entries(network).map(([id, { durations, after }]) => ({
      id,
      name: id.toUpperCase(),
      duration: { outcomes: durations.map(([value, chance]) => ({ value, chance })) },
      ...(after.length === 0 ? {} : { after: [...after] }),
      ...(id === "a" ? { cost: 200 } : {}),
    })),
    risks: [
      { id: "k1", name: "K1", probability: chance, impacts: { tasks: "d", delay: 2, cost: 15 } },
      { id: "k2", name: "K2", probability: 0.2, impacts: { tasks: "a", delay: 1, cost: 40 } },
    ],
    overheads: { id: "burn", name: "Burn", perDay: 10 },
  };
}

/** Every combination of durations and risks with its chance. */
function outcomes(k1: number): { finish: number; cost: number; chance: number }[] {
  const all: { finish: number; cost: number; chance: number }[] = [];
  for (const [a, pa] of network.a.durations)
    for (const [b, pb] of network.b.durations)
      for (const [c, pc] of network.c.durations)
        for (const [d, pd] of network.d.durations)
          for (const [e, pe] of network.e.durations)
            for (const r1 of [0, 1])
              for (const r2 of [0, 1]) {
                const endA = a + r2;
                const finish = Math.max(endA + c, Math.max(endA, b) + d + 2 * r1) + e;
                const risk = (r1 === 1 ? k1 : 1 - k1) * (r2 === 1 ? 0.2 : 0.8);
                all.push({
                  finish,
                  cost: 200 + 10 * finish + 15 * r1 + 40 * r2,
                  chance: pa * pb * pc * pd * pe * risk,
                });
              }
  return all;
}

/** The smallest value with at least p below or at it, and how far the chance of it lies from p on either side. */
function percentile(values: readonly [value: number, chance: number][], p: number) {
  const sorted = [...values].sort((a, b) => a[0] - b[0]);
  let below = 0;
  for (let i = 0; i < sorted.length; i++) {
    const value = sorted[i]?.[0] ?? 0;
    let here = 0;
    for (const [other, chance] of sorted) if (other === value) here += chance;
    if (below + here >= p - 1e-12) return { value, margin: Math.min(p - below, below + here - p) };
    below += here;
    while (sorted[i + 1]?.[0] === value) i++;
  }
  throw new Error("chances do not sum to 1");
}

function comparison() {
  const plan = (chance: number) => {
    const read = planFromData(document(chance));
    if (read.plan === undefined) throw new Error(JSON.stringify(read.problems));
    return read.plan;
  };
  const result = compare(plan(0.3), plan(0.1), { iterations: ITERATIONS });
  if (result.comparison === undefined) throw new Error(JSON.stringify(result.problems));
  return result.comparison;
}

describe("compare(old, new) after one probability changed", () => {
  const { from, to, moves, difference, asked } = comparison();
  const before = outcomes(0.3);
  const after = outcomes(0.1);
  const level = (all: typeof before, of: "finish" | "cost") =>
    percentile(
      all.map((one) => [one[of], one.chance] as [number, number]),
      0.8,
    );

  it("finds P80 of both plans as enumerated: 12 and 11 days, 340 and 335", () => {
    // Four standard errors of a share of n: closer to the level a run may land on the neighbouring value.
    const safe = 4 * Math.sqrt((0.8 * 0.2) / ITERATIONS);
    for (const [all, of, expected, got] of [
      [before, "finish", 12, from.workingDays],
      [after, "finish", 11, to.workingDays],
      [before, "cost", 340, from.cost],
      [after, "cost", 335, to.cost],
    ] as const) {
      const exact = level(all, of);
      expect(exact.value).toBe(expected);
      expect(exact.margin).toBeGreaterThan(of === "finish" ? safe : 0);
      if (exact.margin > safe) expect(got).toBeCloseTo(expected, 9);
      else expect(Math.abs(got - expected)).toBeLessThanOrEqual(5);
    }
  });

  it("tells it as one move of -1 working day", () => {
    expect(moves).toHaveLength(1);
    expect(moves[0]).toMatchObject({ kind: "risks", ids: ["k1"], what: "K1: chance from 30 % to 10 %" });
    expect(moves[0]?.workingDays).toBeCloseTo(-1, 9);
    expect(moves[0]?.workingDays).toBe(difference.workingDays);
    expect(moves[0]?.money).toBe(difference.money);
  });

  it("finds the chances of the target date and sum: 0.758 to 0.853 and 0.605 to 0.746", () => {
    // Exact: 0.75796, 0.85252, 0.60536, 0.74632. The case's own tolerance for 10,000 iterations is 0.02.
    expect(Math.abs((asked.finishBy?.from ?? 0) - 0.75796)).toBeLessThan(0.02);
    expect(Math.abs((asked.finishBy?.to ?? 0) - 0.85252)).toBeLessThan(0.02);
    expect(Math.abs((asked.budget?.from ?? 0) - 0.60536)).toBeLessThan(0.02);
    expect(Math.abs((asked.budget?.to ?? 0) - 0.74632)).toBeLessThan(0.02);
  });
});
