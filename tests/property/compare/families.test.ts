import { describe, expect, it } from "vitest";
import { alignPlan } from "../../../packages/core/src/explain/compare/align/alignPlan.ts";
import { changesBetween } from "../../../packages/core/src/explain/compare/changes/changesBetween.ts";
import { pairOf } from "../../../packages/core/src/explain/compare/changes/pair.ts";
import { groupChanges } from "../../../packages/core/src/explain/compare/groups/groupChanges.ts";
import { barePlan } from "../../../packages/core/src/explain/compare/hybrid/bare.ts";
import { hybridPlan } from "../../../packages/core/src/explain/compare/hybrid/hybridPlan.ts";
import { type Draw, forecast, type Plan, valuesOfPlans } from "../../../packages/core/src/index.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { planOfDocument } from "../laws/runPlan.ts";
import { randomPair, strangers } from "./randomEdits.ts";

/**
 * Hybrids are run on shared draws, each after the one before, and only what differs is placed again. The values have to
 * be those of whole runs of the plans one by one, to the bit: the forecast is the other way of computing them.
 */

/** Hybrids of a pair in a random order, ends included. */
function hybridsOf({ older, newer }: { older: object; newer: object }, seed: number): Plan[] {
  const [was, is] = [planOfDocument(older), planOfDocument(newer)];
  const pair = pairOf(barePlan(alignPlan(was, is).plan), barePlan(is));
  const groups = groupChanges(pair, changesBetween(pair));
  const rng = seededRng(seed);
  return Array.from({ length: 10 }, () => {
    const left = new Set(groups.flatMap((group) => (rng() < 0.5 ? [...group.places] : [])));
    return hybridPlan(pair, (place) => !left.has(place));
  });
}

describe.each([
  ["a plan and its edited copy", randomPair, 16],
  ["two plans of different work", strangers, 8],
] as const)("values of hybrids of %s", (_, make, count) => {
  it.each([
    ["latin-hypercube", 40],
    ["plain", 1100],
  ] as const)("are those of forecasts one by one, to the bit: %s, %s iterations", (design, iterations) => {
    let compared = 0;
    for (let seed = 1; seed <= (iterations > 1000 ? count / 8 : count); seed++) {
      const plans = hybridsOf(make(seed), seed);
      const [first] = plans;
      if (first === undefined) continue;
      // All told on the same calendar from the same start, as their own forecasts would.
      const draw: Draw = { seed: "families", design, iterations };
      const values = valuesOfPlans({ newer: first, earliest: first.start, draw, confidence: 0.7 }, plans);
      plans.forEach((plan, at) => {
        const { forecast: whole } = forecast(plan, { ...draw, confidence: 0.7 });
        compared++;
        expect(values[at] === undefined, `seed ${seed}, hybrid ${at}`).toBe(whole === undefined);
        if (whole === undefined) return;
        expect(values[at]?.[1], `money, seed ${seed}, hybrid ${at}`).toBe(whole.committed.cost);
        if (sameDays(plan, first)) {
          expect(values[at]?.[0], `days, seed ${seed}, hybrid ${at}`).toBe(whole.committed.workingDays);
        }
      });
    }
    expect(compared).toBeGreaterThan(count);
  });
});

/** Whether working days are counted from the same start on the same days. */
function sameDays(a: Plan, b: Plan): boolean {
  const calendar = ({ calendars, calendar: name }: Plan) => JSON.stringify(calendars.get(name));
  return a.start === b.start && calendar(a) === calendar(b);
}
