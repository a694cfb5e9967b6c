import {
  type Compared,
  type CompareOptions,
  type CompareResult,
  compare,
  compared,
  compareSteps,
  type Plan,
  type PlansAsked,
  type ValuesOfPlans,
  valuesOfPlans,
} from "@leeway/core";
import { shareOut, withCrew } from "./crew.ts";
import type { Helper } from "./helper.ts";
import type { ParallelOptions } from "./options.ts";
import { progressOf } from "./progressOf.ts";
import { threadsFor, workOf } from "./share.ts";

/** How many simulations' work a comparison is, roughly, where there are a few groups of changes. */
const comparisonFactor = 16;

/** Plans in a part at least: plans that follow each other differ by little. */
const leastPlans = 4;

/** Parts per thread and ask. */
const partsPerThread = 3;

/**
 * `compare(oldPlan, newPlan, options)` on several threads: the same comparison, to the bit, however many there are.
 * The hybrid plans whose values are asked for are shared out; what to ask next is decided on the caller's thread.
 *
 * Problems are values. Rejects with the signal's reason when aborted, and with the error of a thread that broke.
 */
export async function compareInParallel(
  oldPlan: Plan,
  newPlan: Plan,
  options: CompareOptions & ParallelOptions = {},
): Promise<CompareResult> {
  const { pool, signal } = options;
  signal?.throwIfAborted();
  const ready = compared(oldPlan, newPlan, options);
  const subject = ready.compared;
  if (subject === undefined) return { problems: ready.problems };
  const { seed, design, iterations } = subject.terms.draw;
  const work = comparisonFactor * workOf(newPlan, iterations);
  const threads = threadsFor(work, Number.POSITIVE_INFINITY, options);
  if (pool === undefined || threads === 0) return compare(oldPlan, newPlan, options);
  const run = { seed, design, ...(signal === undefined ? {} : { signal }) };
  return withCrew({ pool, threads, plan: newPlan, options: run }, (crew) =>
    compareOn(crew, subject, options),
  );
}

async function compareOn(
  crew: readonly Helper[],
  subject: Compared,
  { onProgress }: CompareOptions,
): Promise<CompareResult> {
  const steps = compareSteps(subject);
  let step = steps.next();
  while (step.done !== true) {
    const { plans, iterations, from, to } = step.value;
    const tell =
      onProgress &&
      ((done: number, total: number) =>
        onProgress(Math.floor(1000 * (from + ((to - from) * done) / total)), 1000));
    const terms = { ...subject.terms, draw: { ...subject.terms.draw, iterations } };
    const values = (await valuesOn(crew, terms, step.value, tell)) ?? valuesOfPlans(terms, plans, tell);
    step = steps.next(values);
  }
  onProgress?.(1000, 1000);
  return { comparison: step.value, problems: [] };
}

/** Values of the plans of one ask, in its order; undefined when no thread could be had. */
async function valuesOn(
  crew: readonly Helper[],
  { newer: _, ...terms }: Compared["terms"],
  { plans }: PlansAsked,
  tell: ((done: number, total: number) => void) | undefined,
): Promise<ValuesOfPlans | undefined> {
  const size = Math.max(leastPlans, Math.ceil(plans.length / (crew.length * partsPerThread)));
  const firsts = Array.from({ length: Math.ceil(plans.length / size) }, (_, part) => part * size);
  const progress = progressOf(plans.length, tell);
  const values = new Array<ValuesOfPlans[number]>(plans.length);
  const shared = await shareOut(crew, firsts, async (helper, first) => {
    const part = plans.slice(first, first + size);
    const answer = await helper.ask({ kind: "values", terms, plans: part }, [], (done) =>
      progress.during(helper, done),
    );
    if (answer.kind !== "values") throw new Error(`Asked for values, got "${answer.kind}".`);
    answer.values.forEach((value, i) => {
      values[first + i] = value;
    });
    progress.after(helper, part.length);
  });
  return shared ? values : undefined;
}
