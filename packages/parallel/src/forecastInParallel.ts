import {
  type AsWritten,
  applyScenario,
  beginSummary,
  canBeShared,
  compile,
  type Draw,
  dropSpare,
  type Forecast,
  type ForecastOptions,
  type ForecastResult,
  type Model,
  type Plan,
  type Problem,
  planAsWritten,
  simulate,
  summarise,
  type Trials,
  tooWide,
} from "@leeway/core";
import { shareOut, withCrew } from "./crew.ts";
import type { Helper } from "./helper.ts";
import type { ParallelOptions } from "./options.ts";
import type { Pool } from "./pool.ts";
import { buffersOf, momentRowsOf, rowsOf } from "./rows.ts";
import { helpersFor, sharersFor, simulationPerThread, threadsFor, workOf } from "./share.ts";
import { simulateOn } from "./simulateOn.ts";
import { simulateShared } from "./simulateShared.ts";
import { ranksTogether, simulateTogether } from "./simulateTogether.ts";
import { tornadoInParallel } from "./tornadoInParallel.ts";

type Options = ForecastOptions & ParallelOptions;

/** What is forecast: the plan with its scenario, compiled. */
export interface Subject {
  plan: Plan;
  model: Model;
  asWritten: AsWritten;
}

/**
 * `forecast(plan, options)` on several threads: the same object, to the bit, however many there are. Simulation
 * and tornado are shared out; the summary is read on one of the threads, so the caller's stays free meanwhile.
 *
 * Problems are values. Rejects with the signal's reason when aborted, and with the error of a thread that broke.
 */
export async function forecastInParallel(plan: Plan, options: Options = {}): Promise<ForecastResult> {
  const clock = options.clock ?? (() => 0);
  options.signal?.throwIfAborted();
  const scenario = applyScenario(plan, options);
  if (scenario.problems.length > 0) return { problems: scenario.problems };
  const stated = options.iterations ?? scenario.plan.iterations;
  const t0 = clock();
  const first = await begin(scenario.plan, stated, options, clock);
  const { subject, compiled: t1 } = first;
  let { round } = first;
  while (round.forecast !== undefined && 2 * round.forecast.iterations <= 1_000_000) {
    if (!tooWide(subject.model, round.forecast, options.withinDays)) break;
    round = await compute(subject, 2 * round.forecast.iterations, options, clock);
  }
  const { forecast, draw, simulated } = round;
  if (forecast === undefined || draw === undefined) return { problems: round.problems };
  const t3 = clock();
  if (options.tornado === true) forecast.tornado = await tornadoInParallel(subject, draw, forecast, options);
  return {
    forecast,
    problems: round.problems,
    ...(options.clock === undefined
      ? {}
      : { timing: { compile: t1 - t0, simulate: simulated - t1, summarise: t3 - simulated } }),
  };
}

/** The first round; with helpers in common memory where that is asked for. */
async function begin(
  plan: Plan,
  n: number,
  options: Options,
  clock: () => number,
): Promise<{ subject: Subject; round: Round; compiled: number }> {
  const { pool } = options;
  const compiled = () => {
    const model = compile(plan);
    return { subject: { plan, model, asWritten: planAsWritten(model) }, compiled: clock() };
  };
  const sharers = pool === undefined ? 0 : sharersFor(workOf(plan, n), n, options);
  if (pool !== undefined && sharers > 0) {
    const model = compile(plan);
    const t1 = clock();
    const run = { ...options, iterations: n };
    let asWritten: AsWritten | undefined;
    const computeAsWritten = () => {
      asWritten ??= planAsWritten(model);
      return asWritten;
    };
    const shared = canBeShared(model, run)
      ? await computeShared(pool, sharers, model, computeAsWritten, run, clock)
      : undefined;
    dropSpare();
    const subject = { plan, model, asWritten: computeAsWritten() };
    return { subject, compiled: t1, round: shared ?? (await compute(subject, n, options, clock)) };
  }
  dropSpare();
  const helpers = helpersFor(n, options);
  if (pool === undefined || helpers === 0) {
    const own = compiled();
    return { ...own, round: await compute(own.subject, n, options, clock) };
  }
  return withCrew({ pool, threads: helpers, plan, options }, async (crew) => {
    const own = compiled(); // while the helpers compile too
    const { model, asWritten } = own.subject;
    const together = await simulateTogether(crew, own.subject, { ...options, iterations: n });
    const simulated = clock();
    const { trials, problems } = together.simulation;
    if (trials === undefined) return { ...own, round: { problems, simulated } };
    const ranks = await ranksTogether(together, own.subject, options.confidence ?? model.confidence);
    const forecast = summarise(model, trials, asWritten, {
      ...(options.confidence === undefined ? {} : { confidence: options.confidence }),
      ...(ranks === undefined ? {} : { ranks }),
    });
    return { ...own, round: { forecast, draw: drawOf(trials), problems, simulated } };
  });
}

interface Round {
  forecast?: Forecast;
  /** What a tornado needs to know of the simulation. */
  draw?: Draw;
  problems: Problem[];
  /** When the simulation was done, by the clock. */
  simulated: number;
}

/** One simulation and its summary in memory that the caller shares with helpers; undefined where it cannot be had. */
async function computeShared(
  pool: Pool,
  helpers: number,
  model: Model,
  computeAsWritten: () => AsWritten,
  options: Options & { iterations: number },
  clock: () => number,
): Promise<Round | undefined> {
  const shared = await simulateShared(pool, helpers, model, computeAsWritten, options);
  if (shared === undefined) return undefined;
  const { trials, problems } = shared.simulation;
  if (trials === undefined) return { problems, simulated: clock() };
  const simulated = clock();
  const asWritten = computeAsWritten();
  const finish = beginSummary(model, trials, asWritten, options.confidence); // while helpers read ranks
  const ranks = await shared.ranks();
  const forecast = finish(ranks);
  return { forecast, draw: drawOf(trials), problems, simulated };
}

/** One simulation and its summary, on threads where that pays and threads can be had. */
async function compute(subject: Subject, n: number, options: Options, clock: () => number): Promise<Round> {
  const { plan, model, asWritten } = subject;
  const { pool, confidence } = options;
  const run = { ...options, iterations: n };
  const threads = threadsFor(workOf(plan, n), n, options, simulationPerThread);
  if (pool !== undefined && threads > 0) {
    const round = await withCrew(
      { pool, threads, plan, options },
      async (crew): Promise<Round | undefined> => {
        const simulation = await simulateOn(crew, model, asWritten, run);
        if (simulation === undefined) return undefined;
        const { trials, problems } = simulation;
        const simulated = clock();
        if (trials === undefined) return { problems, simulated };
        const draw = drawOf(trials);
        return { forecast: await summariseOn(crew, trials, confidence), draw, problems, simulated };
      },
    );
    if (round !== undefined) return round;
  }
  const { trials, problems } = simulate(model, run);
  const simulated = clock();
  if (trials === undefined) return { problems, simulated };
  return {
    forecast: summarise(model, trials, asWritten, options),
    draw: drawOf(trials),
    problems,
    simulated,
  };
}

function drawOf({ seed, design, iterations }: Trials): Draw {
  return { seed, design, iterations };
}

/** Has one of the crew read the forecast off the trials, whose memory is handed over to it. */
async function summariseOn(
  crew: readonly Helper[],
  trials: Trials,
  confidence: number | undefined,
): Promise<Forecast> {
  const found: Forecast[] = [];
  await shareOut(crew, [trials], async (helper) => {
    const request = { kind: "summarise", trials, confidence } as const;
    const answer = await helper.ask(
      request,
      buffersOf([...rowsOf(trials), ...momentRowsOf(trials.moments?.parts ?? [])]),
    );
    if (answer.kind === "summary") found.push(answer.forecast);
  });
  const [forecast] = found;
  if (forecast === undefined) throw new Error("The threads that simulated are gone.");
  return forecast;
}
