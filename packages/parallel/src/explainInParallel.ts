import {
  type Ask,
  type Explained,
  type ExplainOptions,
  type ExplainResult,
  explain,
  explained,
  explainSteps,
  type Measure,
  measureVariants,
  type Plan,
  progressWithin,
} from "@leeway/core";
import { shareOut, withCrew } from "./crew.ts";
import type { Helper } from "./helper.ts";
import type { ParallelOptions } from "./options.ts";
import { progressOf } from "./progressOf.ts";
import { threadsFor, workOf } from "./share.ts";

/** How many simulations' work an explanation is, roughly: some hundred re-runs of a part of the plan. */
const explanationFactor = 100;

/** Parts per thread and ask: variants differ in what they reach. */
const partsPerThread = 2;

/** Variants in a part at least: a part begins with a run of the model as it is. */
const leastVariants = 24;

/**
 * `explain(plan, options)` on several threads: the same explanation, to the bit, however many there are. The variants
 * of each step are shared out; what to ask next is decided on the caller's thread.
 *
 * Problems are values. Rejects with the signal's reason when aborted, and with the error of a thread that broke.
 */
export async function explainInParallel(
  plan: Plan,
  options: ExplainOptions & ParallelOptions = {},
): Promise<ExplainResult> {
  const { pool, signal } = options;
  signal?.throwIfAborted();
  const ready = explained(plan, options);
  const subject = ready.explained;
  if (subject === undefined) return { problems: ready.problems };
  const { seed, design, iterations } = subject.draw;
  const work = explanationFactor * workOf(ready.plan, iterations);
  const threads = threadsFor(work, Number.POSITIVE_INFINITY, options);
  if (pool !== undefined && threads > 0) {
    const run = { seed, design, ...(signal === undefined ? {} : { signal }) };
    try {
      return await withCrew({ pool, threads, plan: ready.plan, options: run }, (crew) =>
        explainOn(crew, subject, options),
      );
    } catch (error) {
      // A thread can only say that it met a calendar's end; which task it was is found again here, as a problem.
      if (!(error instanceof Error) || error.name !== "BeyondCalendarError") throw error;
    }
  }
  return explain(plan, options);
}

async function explainOn(
  crew: readonly Helper[],
  subject: Explained,
  options: ExplainOptions,
): Promise<ExplainResult> {
  const { model, draw, confidence } = subject;
  const steps = explainSteps(subject);
  let step = steps.next();
  while (step.done !== true) {
    const tell = progressWithin(step.value, options.onProgress);
    const measures =
      (await measureOn(crew, subject, step.value, tell)) ??
      measureVariants(
        model,
        { ...draw, iterations: step.value.iterations },
        confidence,
        step.value.settings,
        tell,
      );
    step = steps.next(measures);
  }
  options.onProgress?.(1000, 1000);
  return { explanation: step.value, problems: [] };
}

/** Measures of one ask, in its order; undefined when no thread could be had. */
async function measureOn(
  crew: readonly Helper[],
  { draw, confidence }: Explained,
  { settings, iterations }: Ask,
  tell: ((done: number, total: number) => void) | undefined,
): Promise<Measure[] | undefined> {
  const size = Math.max(leastVariants, Math.ceil(settings.length / (crew.length * partsPerThread)));
  const firsts = Array.from({ length: Math.ceil(settings.length / size) }, (_, part) => part * size);
  const progress = progressOf(settings.length * iterations, tell);
  const measures = new Array<Measure>(settings.length);
  const shared = await shareOut(crew, firsts, async (helper, first) => {
    const part = settings.slice(first, first + size);
    const request = { kind: "measure", draw: { ...draw, iterations }, confidence, settings: part } as const;
    const answer = await helper.ask(request, [], (done) => progress.during(helper, done));
    if (answer.kind !== "measures") throw new Error(`Asked for measures, got "${answer.kind}".`);
    answer.measures.forEach((measure, i) => {
      measures[first + i] = measure;
    });
    progress.after(helper, part.length * iterations);
  });
  return shared ? measures : undefined;
}
