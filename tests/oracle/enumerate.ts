import type { Plan, RegisterEntry } from "../../packages/core/src/plan/types.ts";
import { type KeyedEstimate, keyedEstimates } from "./estimates.ts";
import { evaluate } from "./evaluate.ts";
import type { Realisation } from "./realisation.ts";
import { adoptedResponses, chanceOf, registerOf } from "./register.ts";
import { TOLERANCE } from "./time.ts";

/** One possible end of the project and its probability. */
export interface ExactOutcome {
  finish: number;
  cost: number;
  probability: number;
}

/** The exact joint distribution of finish and cost, and the exact share of iterations each task is critical. */
export interface ExactDistribution {
  /** Sorted by finish, then cost; outcomes equal to 1e-9 in both are one. Probabilities sum to 1. */
  outcomes: ExactOutcome[];
  criticality: Map<string, number>;
  /** How many combinations were worked through. */
  combinations: number;
}

/** One independent chance: what it decides and the probability of each way it can go. */
type Branches = readonly number[];

/**
 * Works through every combination of a small plan whose only uncertainties are `outcomes` estimates, `chance`
 * of tasks and the register. Only what an iteration asks for is branched on, so a closed risk or the impact of
 * one that does not occur costs nothing.
 *
 * Throws on a range estimate or a correlation, and beyond `limit` combinations.
 */
export function enumerateExactly(plan: Plan, limit = 200_000): ExactDistribution {
  if (plan.correlations.length > 0) throw new Error("correlations cannot be enumerated");
  const ends: ExactOutcome[] = [];
  const criticality = new Map(plan.tasks.map((task) => [task.id, 0]));
  // The path through the tree of choices: which branch was taken at each, in the order they came up.
  let path: { taken: number; branches: Branches }[] = [];
  for (let combinations = 1; ; combinations++) {
    if (combinations > limit) throw new Error(`more than ${limit} combinations`);
    const asked = new Map<string, number>();
    const choose = (what: string, branches: Branches): number => {
      const known = asked.get(what);
      if (known !== undefined) return known;
      const depth = asked.size;
      path[depth] ??= { taken: firstPossible(branches, 0), branches };
      const { taken } = path[depth];
      asked.set(what, taken);
      return taken;
    };
    const evaluation = evaluate(plan, chosen(plan, choose));
    const probability = path.reduce((p, { taken, branches }) => p * (branches[taken] ?? 0), 1);
    ends.push({ finish: evaluation.finish, cost: evaluation.cost, probability });
    for (const [id, task] of evaluation.tasks) {
      if (task.critical) criticality.set(id, (criticality.get(id) ?? 0) + probability);
    }
    path = nextPath(path);
    if (path.length === 0) return { outcomes: merged(ends), criticality, combinations };
  }
}

/** The first branch from `from` on with a probability above 0; the number of branches if there is none. */
function firstPossible(branches: Branches, from: number): number {
  let k = from;
  while (k < branches.length && !((branches[k] ?? 0) > 0)) k++;
  return k;
}

/** The path with its last choice moved on, those used up dropped; empty when all are. */
function nextPath(path: { taken: number; branches: Branches }[]) {
  const next = [...path];
  for (let last = next.pop(); last !== undefined; last = next.pop()) {
    const taken = firstPossible(last.branches, last.taken + 1);
    if (taken < last.branches.length) return [...next, { taken, branches: last.branches }];
  }
  return [];
}

/** A realisation whose every answer is a choice of branches. */
function chosen(plan: Plan, choose: (what: string, branches: Branches) => number): Realisation {
  const estimates = keyedEstimates(plan);
  const adopted = adoptedResponses(plan);
  return {
    value(key) {
      const keyed = estimates.get(key);
      if (!keyed) throw new Error(`no estimate ${key}`);
      const value = outcomeValue(keyed, (branches) => choose(key, branches));
      return keyed.cut ? Math.max(0, value) : value;
    },
    needed(id) {
      const task = plan.tasks.find((t) => t.id === id);
      if (!task) throw new Error(`no task ${id}`);
      if (task.onlyIf !== undefined && !adopted.has(task.onlyIf)) return false;
      return choose(`${id} needed`, [task.chance, 1 - task.chance]) === 0;
    },
    occurs(id) {
      const entry = registerOf(plan).find((e) => e.id === id);
      if (!entry) throw new Error(`no entry ${id}`);
      const chance = chanceOf(plan, entry);
      if (chance === 0 || chance === 1) return chance === 1;
      if (entry.group === undefined) return choose(`${id} occurs`, [chance, 1 - chance]) === 0;
      const { slots, branches } = groupSlots(plan, entry.group);
      return slots[choose(`group ${entry.group}`, branches)]?.id === id;
    },
  };
}

function outcomeValue({ key, estimate }: KeyedEstimate, choose: (branches: Branches) => number): number {
  if (estimate.kind === "fixed") return estimate.value;
  if (estimate.kind === "range") throw new Error(`${key} is a range: only outcomes can be enumerated`);
  const value = estimate.outcomes[choose(estimate.outcomes.map((o) => o.chance))]?.value;
  if (value === undefined) throw new Error(`${key}: no such outcome`);
  return value;
}

/**
 * One draw serves a group. Each entry's slot begins at the sum of the own probabilities before it, in id
 * order, and is as wide as its probability now; slots do not overlap, so each is one branch and the rest of
 * the unit interval, in which none occurs, is the last.
 */
function groupSlots(plan: Plan, group: string): { slots: RegisterEntry[]; branches: Branches } {
  const slots = registerOf(plan).filter((entry) => entry.group === group);
  const widths = slots.map((entry) => chanceOf(plan, entry));
  const none = 1 - widths.reduce((sum, width) => sum + width, 0);
  return { slots, branches: [...widths, none > TOLERANCE ? none : 0] };
}

/** Ends that are equal to the tolerance taken together, sorted. */
function merged(ends: ExactOutcome[]): ExactOutcome[] {
  const same = (a: number, b: number) => Math.abs(a - b) <= TOLERANCE;
  const all: ExactOutcome[] = [];
  for (const end of ends) {
    const known = all.find((o) => same(o.finish, end.finish) && same(o.cost, end.cost));
    if (known) known.probability += end.probability;
    else all.push({ ...end });
  }
  return all.sort((a, b) => (same(a.finish, b.finish) ? a.cost - b.cost : a.finish - b.finish));
}
