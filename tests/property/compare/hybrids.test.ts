import { describe, expect, it } from "vitest";
import { alignPlan } from "../../../packages/core/src/explain/compare/align/alignPlan.ts";
import { changesBetween } from "../../../packages/core/src/explain/compare/changes/changesBetween.ts";
import { type Pair, pairOf } from "../../../packages/core/src/explain/compare/changes/pair.ts";
import { type Group, groupChanges } from "../../../packages/core/src/explain/compare/groups/groupChanges.ts";
import { barePlan } from "../../../packages/core/src/explain/compare/hybrid/bare.ts";
import { hybridPlan } from "../../../packages/core/src/explain/compare/hybrid/hybridPlan.ts";
import { compile, type Plan, planFromData, simulate } from "../../../packages/core/src/index.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { planOfDocument } from "../laws/runPlan.ts";
import { documentOf } from "./documentOf.ts";
import { randomPair, strangers } from "./randomEdits.ts";

/**
 * A hybrid takes some groups of changes from the new plan and leaves the others as they were. Whatever is taken, the
 * result keeps the rules of the plan format (its own reader is asked), and the two ends are the two plans.
 */

function pairOfDocuments({ older, newer }: { older: object; newer: object }): {
  pair: Pair;
  groups: Group[];
} {
  const [was, is] = [planOfDocument(older), planOfDocument(newer)];
  const pair = pairOf(barePlan(alignPlan(was, is).plan), barePlan(is));
  return { pair, groups: groupChanges(pair, changesBetween(pair)) };
}

function take(pair: Pair, groups: readonly Group[], taken: (at: number) => boolean): Plan {
  const left = new Set(groups.flatMap((group, at) => (taken(at) ? [] : [...group.places])));
  return hybridPlan(pair, (place) => !left.has(place));
}

function problemsOf(plan: Plan): string[] {
  return planFromData(documentOf(plan))
    .problems.filter(({ severity }) => severity === "error")
    .map(({ path, received, rule }) => `${path} ${received}: ${rule}`);
}

/** Finish and cost in every iteration; what calendars do not cover is told by the task. */
function rowsOf(plan: Plan): unknown {
  const { trials, problems } = simulate(compile(plan), { iterations: 24, seed: "one" });
  return trials === undefined
    ? problems.map(({ received }) => received)
    : { finish: [...trials.finish], cost: [...trials.cost], days: [...trials.finishDay] };
}

describe.each([
  ["a plan and its edited copy", randomPair, 64],
  ["two plans of different work", strangers, 20],
] as const)("hybrids of %s", (_, make, count) => {
  it("keep the rules of the plan format, whichever groups are taken", () => {
    let checked = 0;
    let several = 0;
    for (let seed = 1; seed <= count; seed++) {
      const { pair, groups } = pairOfDocuments(make(seed));
      if (groups.length > 1) several++;
      const rng = seededRng(seed);
      const choices = Array.from({ length: 12 }, () => groups.map(() => rng() < 0.5));
      // Each alone, and all but each: what a single change needs shows there.
      groups.slice(0, 12).forEach((_, k) => {
        choices.push(groups.map((__, at) => at === k));
        choices.push(groups.map((__, at) => at !== k));
      });
      for (const choice of choices) {
        checked++;
        const hybrid = take(pair, groups, (at) => choice[at] === true);
        expect(problemsOf(hybrid), `seed ${seed}, ${JSON.stringify(choice)}`).toEqual([]);
      }
    }
    expect(checked).toBeGreaterThanOrEqual(12 * count);
    expect(several).toBeGreaterThan(count / 4);
  });

  it("are the old plan with no group and the new one with all: the same rows, to the bit", () => {
    for (let seed = 1; seed <= count / 4; seed++) {
      const documents = make(seed);
      const { pair, groups } = pairOfDocuments(documents);
      expect(rowsOf(take(pair, groups, () => false)), `old, seed ${seed}`).toEqual(
        rowsOf(planOfDocument(documents.older)),
      );
      expect(rowsOf(take(pair, groups, () => true)), `new, seed ${seed}`).toEqual(
        rowsOf(planOfDocument(documents.newer)),
      );
    }
  });
});
