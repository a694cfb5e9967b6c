import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { Design } from "../../sampling/design.ts";
import { version } from "../../version.ts";
import { runProblems } from "../responses/drawOf.ts";
import type { Comparison, Effect, Move } from "../types.ts";
import { BeyondCalendarError } from "../variants.ts";
import { alignPlan } from "./align/alignPlan.ts";
import { alsoChanged } from "./changes/alsoChanged.ts";
import { changesBetween } from "./changes/changesBetween.ts";
import { pairOf } from "./changes/pair.ts";
import { comparisonWarnings } from "./comparisonWarnings.ts";
import { barePlan } from "./hybrid/bare.ts";
import { movesBetween, type PlansAsked, type ValuesOfPlans } from "./movesBetween.ts";
import { type Asked, type Chances, type Standpoint, standpointOf } from "./run/standpointOf.ts";
import type { Terms } from "./run/terms.ts";
import { valuesOfPlans } from "./run/valuesOfPlans.ts";

/** What of two versions is compared, and on how many futures. */
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
/** What moved between two versions, or why that cannot be told. */
export interface CompareResult {
  comparison?: Comparison;
  problems: ComparedProblem[];
}

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
  const ready = compared(oldPlan, newPlan, options);
  if (ready.compared === undefined) return { problems: ready.problems };
  const { terms } = ready.compared;
  const steps = compareSteps(ready.compared);
  let step = steps.next();
  while (step.done !== true) {
    const { plans, iterations, from, to } = step.value;
    const tell = options.onProgress;
    const values = valuesOfPlans(
      { ...terms, draw: { ...terms.draw, iterations } },
      plans,
      tell && ((done, total) => tell(Math.floor(1000 * (from + ((to - from) * done) / total)), 1000)),
    );
    step = steps.next(values);
  }
  options.onProgress?.(1000, 1000);
  return { comparison: step.value, problems: [] };
}

/** Two plans ready to be compared: where each stands. */
export interface Compared {
  oldPlan: Plan;
  newPlan: Plan;
  terms: Terms;
  from: Standpoint;
  to: Standpoint;
}

/** Runs both plans; the problems of both where one cannot be run. Cost: two runs. */
export function compared(
  oldPlan: Plan,
  newPlan: Plan,
  options: CompareOptions,
): { compared?: Compared; problems: ComparedProblem[] } {
  const wrong = runProblems(options);
  if (wrong.length > 0) return { problems: wrong.map((problem) => ({ ...problem, of: "new" })) };
  const terms: Terms = {
    newer: newPlan,
    earliest: oldPlan.start < newPlan.start ? oldPlan.start : newPlan.start,
    draw: {
      seed: options.seed ?? newPlan.seed,
      design: options.design ?? "latin-hypercube",
      iterations: options.iterations ?? newPlan.iterations,
    },
    confidence: options.confidence ?? newPlan.commitment.confidence,
  };
  const asked = askedOf(newPlan);
  const from = tryStandpoint(terms, oldPlan, asked, "old");
  const to = tryStandpoint(terms, newPlan, asked, "new");
  if ("of" in from || "of" in to) {
    return { problems: [from, to].filter((one): one is ComparedProblem => "of" in one) };
  }
  return { compared: { oldPlan, newPlan, terms, from, to }, problems: [] };
}

/** `compare` as a generator that yields the plans whose committed values it needs: see `movesBetween`. */
export function* compareSteps({
  oldPlan,
  newPlan,
  terms,
  from,
  to,
}: Compared): Generator<PlansAsked, Comparison, ValuesOfPlans> {
  const { draw, confidence } = terms;
  const aligned = alignPlan(oldPlan, newPlan);
  const bareOld = barePlan(aligned.plan);
  const pair = pairOf(bareOld, barePlan(newPlan));
  const changes = changesBetween(pair);
  // In the new plan's names equals may fall otherwise.
  const none =
    aligned.differs && changes.length > 0 ? (valuesOfPlans(terms, [bareOld])[0] ?? from.value) : from.value;
  const { iterations, seed } = draw;
  const { moves, orders } = yield* movesBetween(pair, changes, { none, all: to.value, seed, iterations });
  const difference: Effect = {
    workingDays: to.value[0] - from.value[0],
    money: to.value[1] - from.value[1],
  };
  return {
    stamp: { ...draw, version, sha256: newPlan.sha256 },
    plan: { title: newPlan.title, currency: newPlan.currency, start: newPlan.start },
    old: { title: oldPlan.title, start: oldPlan.start, sha256: oldPlan.sha256 },
    confidence,
    from: from.standing,
    to: to.standing,
    difference,
    moves: [...moves, ...restOf(moves, difference, [from.value, to.value])],
    orders,
    asked: chancesIn(askedOf(newPlan), from.chance, to.chance),
    alsoChanged: alsoChanged(pairOf(aligned.plan, newPlan), aligned.renamed),
    warnings: comparisonWarnings(oldPlan, newPlan, { ...draw, confidence }),
  };
}

function askedOf({ commitment: { finishBy, budget } }: Plan): Asked {
  return {
    ...(finishBy === undefined ? {} : { finishBy }),
    ...(budget === undefined ? {} : { budget }),
  };
}

function tryStandpoint(
  terms: Terms,
  plan: Plan,
  asked: Asked,
  of: "old" | "new",
): Standpoint | ComparedProblem {
  try {
    return standpointOf(terms, barePlan(plan), asked);
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
