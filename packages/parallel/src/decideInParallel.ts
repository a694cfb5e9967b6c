import {
  type Decision,
  type Gauge,
  type GaugeAsk,
  gaugeSets,
  inNearOrder,
  type Plan,
  progressOfAsks,
  type ReachOptions,
  type ReachResult,
  type ResponsesOptions,
  type ResponsesResult,
  reach,
  reachDecision,
  responses,
  responsesDecision,
  switchNames,
} from "@leeway/core";
import { shareOut, withCrew } from "./crew.ts";
import type { Helper } from "./helper.ts";
import type { ParallelOptions } from "./options.ts";
import { progressOf } from "./progressOf.ts";
import { threadsFor, workOf } from "./share.ts";

/** How many simulations' work a question is, roughly: so many sets, each a part of a run. */
const questionFactor = 60;

/** Sets in a part at least: a part begins with draws of its own. */
const leastSets = 16;

/** `responses(plan, options)` on several threads: the same answer, to the bit, however many there are. */
export async function responsesInParallel(
  plan: Plan,
  options: ResponsesOptions & ParallelOptions = {},
): Promise<ResponsesResult> {
  const { decision, problems } = responsesDecision(plan, options);
  if (decision === undefined) return { problems };
  const found = await decide(decision, options);
  return found === undefined ? responses(plan, options) : { responses: found, problems };
}

/** `reach(plan, options)` on several threads: the same answer, to the bit, however many there are. */
export async function reachInParallel(
  plan: Plan,
  options: ReachOptions & ParallelOptions = {},
): Promise<ReachResult> {
  const { decision, problems } = reachDecision(plan, options);
  if (decision === undefined) return { problems };
  const found = await decide(decision, options);
  return found === undefined ? reach(plan, options) : { reach: found, problems };
}

type Options = ParallelOptions & { onProgress?: (done: number, total: number) => void };

/** The answer; undefined where the caller's own thread has to find it. */
async function decide<T>(decision: Decision<T>, options: Options): Promise<T | undefined> {
  const { pool, signal } = options;
  signal?.throwIfAborted();
  const { plan, draw } = decision;
  const { seed, design, iterations } = draw;
  const work = questionFactor * workOf(plan, iterations);
  const threads = threadsFor(work, Number.POSITIVE_INFINITY, options);
  if (pool === undefined || threads === 0) return undefined;
  const run = { seed, design, ...(signal === undefined ? {} : { signal }) };
  try {
    return await withCrew({ pool, threads, plan, options: run }, (crew) => decideOn(crew, decision, options));
  } catch (error) {
    // A thread can only say that it met a calendar's end; which task it was is found again, as a problem.
    if (error instanceof Error && error.name === "BeyondCalendarError") return undefined;
    throw error;
  }
}

async function decideOn<T>(
  crew: readonly Helper[],
  decision: Decision<T>,
  { onProgress }: Options,
): Promise<T> {
  const progress = progressOfAsks(onProgress);
  let step = decision.work.next();
  while (step.done !== true) {
    const tell = progress(step.value);
    const gauges =
      (await gaugesOn(crew, decision, step.value, tell)) ?? gaugeSets(decision, step.value, tell);
    step = decision.work.next(gauges);
  }
  onProgress?.(1000, 1000);
  return step.value;
}

/** Gauges of one ask, in its order; undefined when no thread could be had. */
async function gaugesOn(
  crew: readonly Helper[],
  { scenarios, draw, targets }: Pick<Decision<unknown>, "scenarios" | "draw" | "targets">,
  { sets, iterations }: GaugeAsk,
  tell: ((done: number, total: number) => void) | undefined,
): Promise<Gauge[] | undefined> {
  // Sets that differ by little stay together.
  const about = switchNames(scenarios);
  const order = inNearOrder(scenarios, sets);
  const size = Math.max(leastSets, Math.ceil(sets.length / crew.length));
  const firsts = Array.from({ length: Math.ceil(sets.length / size) }, (_, part) => part * size);
  const progress = progressOf(sets.length * iterations, tell);
  const gauges = new Array<Gauge>(sets.length);
  const shared = await shareOut(crew, firsts, async (helper, first) => {
    const places = order.slice(first, first + size);
    const part = places.map((place) => sets[place] as bigint);
    const request = { kind: "gauge", about, draw, targets, sets: part, iterations } as const;
    const answer = await helper.ask(request, [], (done) => progress.during(helper, done));
    if (answer.kind !== "gauges") throw new Error(`Asked for gauges, got "${answer.kind}".`);
    answer.gauges.forEach((gauge, i) => {
      gauges[places[i] as number] = gauge;
    });
    progress.after(helper, part.length * iterations);
  });
  return shared ? gauges : undefined;
}
