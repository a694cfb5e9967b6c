import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { Design } from "../../sampling/design.ts";
import { version } from "../../version.ts";
import type { Comparison, Effect, Move } from "../types.ts";
import { BeyondCalendarError, type Draw } from "../variants.ts";
import { alignPlan } from "./align/alignPlan.ts";
import { alsoChanged } from "./changes/alsoChanged.ts";
import { changesBetween } from "./changes/changesBetween.ts";
import { pairOf } from "./changes/pair.ts";
import { comparisonWarnings } from "./comparisonWarnings.ts";
import { barePlan } from "./hybrid/bare.ts";
import { movesBetween } from "./movesBetween.ts";
import { type Asked, type Chances, type Runner, runner, type Standpoint } from "./run/runner.ts";

export interface CompareOptions {
  /** Defaults: the new plan's own. */
  iterations?: number;
  seed?: string;
  confidence?: number;
  /** Default `latin-hypercube`. */
  design?: Design;
  onProgress?: (done: number, total: number) => void;
}

/** A problem and the plan it is in. */
export interface ComparedProblem extends Problem {
  of: "old" | "new";
}
export interface CompareResult {
  comparison?: Comparison;
  problems: ComparedProblem[];
}

/** Groups are ranked on so many iterations where there are too many to list. */
const rankingIterations = 2048;

/**
 * What moved between two plans: the changes that can move a number, found by id (and `was`), in groups that can be
 * taken apart; what each group moved the committed finish and the committed cost by, averaged over the orders in
 * which they may come (Shapley 1953, recalled; every order up to eight groups, sampled beyond), on the same draws.
 * The moves add up to the difference.
 *
 * Both plans run with the new one's seed, iterations and confidence; working days are counted on its calendar from
 * its start. Changes that move neither date nor sum are listed apart.
 *
 * Problems are values, those of both plans at once; nothing is thrown. Cost: 2^k runs of the plan for k groups up to
 * eight, a few hundred beyond.
 */
export function compare(oldPlan: Plan, newPlan: Plan, options: CompareOptions = {}): CompareResult {
  const draw: Draw = {
    seed: options.seed ?? newPlan.seed,
    design: options.design ?? "latin-hypercube",
    iterations: options.iterations ?? newPlan.iterations,
  };
  const confidence = options.confidence ?? newPlan.commitment.confidence;
  const earliest = oldPlan.start < newPlan.start ? oldPlan.start : newPlan.start;
  const run = runner(newPlan, earliest, draw, confidence);
  const quick = { ...draw, iterations: Math.min(draw.iterations, rankingIterations) };
  const bareNew = barePlan(newPlan);
  const { finishBy, budget } = newPlan.commitment;
  const asked: Asked = {
    ...(finishBy === undefined ? {} : { finishBy }),
    ...(budget === undefined ? {} : { budget }),
  };
  const from = tryStanding(run, barePlan(oldPlan), asked, "old");
  const to = tryStanding(run, bareNew, asked, "new");
  if ("of" in from || "of" in to) {
    return { problems: [from, to].filter((one): one is ComparedProblem => "of" in one) };
  }

  const aligned = alignPlan(oldPlan, newPlan);
  const bareOld = barePlan(aligned.plan);
  const pair = pairOf(bareOld, bareNew);
  const none = aligned.differs ? run.valueOf(bareOld) : from.value;
  const { moves, orders } = movesBetween(
    pair,
    changesBetween(pair),
    run,
    runner(newPlan, earliest, quick, confidence),
    { none, all: to.value, seed: draw.seed, onProgress: options.onProgress },
  );
  const difference: Effect = {
    workingDays: to.value[0] - from.value[0],
    money: to.value[1] - from.value[1],
  };
  return {
    problems: [],
    comparison: {
      stamp: { ...draw, version, sha256: newPlan.sha256 },
      plan: { title: newPlan.title, currency: newPlan.currency, start: newPlan.start },
      old: { title: oldPlan.title, start: oldPlan.start, sha256: oldPlan.sha256 },
      confidence,
      from: from.standing,
      to: to.standing,
      difference,
      moves: [...moves, ...restOf(moves, difference, [from.value, to.value])],
      orders,
      asked: chancesIn(asked, from.chance, to.chance),
      alsoChanged: alsoChanged(pairOf(aligned.plan, newPlan), aligned.renamed),
      warnings: comparisonWarnings(oldPlan, newPlan, { ...draw, confidence }),
    },
  };
}

function tryStanding(run: Runner, plan: Plan, asked: Asked, of: "old" | "new"): Standpoint | ComparedProblem {
  try {
    return run.standingOf(plan, asked);
  } catch (error) {
    if (error instanceof BeyondCalendarError) return { ...error.problem, of };
    throw error;
  }
}

/**
 * What no change explains: names can decide between equals (whom a person serves first) and say which draws an item
 * gets. Rounding is no move.
 */
function restOf(moves: readonly Move[], difference: Effect, values: readonly (readonly number[])[]): Move[] {
  const left = (key: keyof Effect, d: number) => {
    const rest = difference[key] - moves.reduce((sum, move) => sum + move[key], 0);
    const size = values.reduce((most, value) => Math.max(most, Math.abs(value[d] ?? 0)), 1);
    return Math.abs(rest) > 1e-10 * size ? rest : 0;
  };
  const rest: Effect = { workingDays: left("workingDays", 0), money: left("money", 1) };
  if (rest.workingDays === 0 && rest.money === 0) return [];
  const what = "Items renamed: ties between equals fall otherwise, and what lost its `was` is drawn anew";
  return [{ ...rest, what, ids: [], kind: "other", error: { workingDays: 0, money: 0 }, changes: [what] }];
}

function chancesIn({ finishBy, budget }: Asked, from: Chances, to: Chances): Comparison["asked"] {
  return {
    ...(finishBy === undefined
      ? {}
      : { finishBy: { date: finishBy, from: from.finishBy ?? 0, to: to.finishBy ?? 0 } }),
    ...(budget === undefined ? {} : { budget: { sum: budget, from: from.budget ?? 0, to: to.budget ?? 0 } }),
  };
}
