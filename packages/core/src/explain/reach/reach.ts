import { dayNumber } from "../../calendar/dates.ts";
import { applyScenario } from "../../plan/applyScenario.ts";
import type { Problem } from "../../plan/problem.ts";
import type { IsoDate, Plan } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { drawOf, type RunOptions, runProblems } from "../responses/drawOf.ts";
import { outlookOf, type Targets } from "../responses/gauge.ts";
import { type Asking, answered, type Gauging, newGauges } from "../responses/gauges.ts";
import type { Decision } from "../responses/responses.ts";
import { scenariosOf } from "../responses/scenarios.ts";
import { has } from "../responses/sets.ts";
import { everySwitch, type Switch } from "../responses/switches.ts";
import { BeyondCalendarError } from "../stage.ts";
import type { Reach, ReachWay, SearchMethod } from "../types.ts";
import { everySet } from "./everySet.ts";
import { greedySets } from "./greedySets.ts";
import { hitsIn, isReached, type Question } from "./question.ts";
import { type Target, targetOf } from "./targetOf.ts";
import { wayOf } from "./wayOf.ts";

/** Which date (ISO) or sum (currency of the plan) is to be reached, at which level. */
export interface ReachOptions extends RunOptions {
  /** The date to make and the sum to keep; when neither is given, what the plan's commitment asks for. */
  finishBy?: IsoDate;
  sum?: number;
}
/** What it would take, or why that cannot be told. */
export interface ReachResult {
  reach?: Reach;
  problems: Problem[];
}

/** Up to so many options every combination is tried: 4,096 of them. */
const mostOptions = 12;
/** Iterations on which a way is looked for where there are more. */
const fewIterations = 1024;

/**
 * What it would take to make a date, a sum or both at a confidence: responses not adopted yet, optional scope that
 * may be dropped, capacity that people `couldAdd`. Each step with the chance it adds, in order; or that nothing does,
 * and how close the best combination comes.
 *
 * A chance told here is the one `forecast` tells of the plan with these steps taken (`with`, `without`), to the bit.
 *
 * Problems are values. Cost: one run for each combination, each only of what it reaches; beyond twelve options see
 * `greedySets`.
 */
export function reach(plan: Plan, options: ReachOptions = {}): ReachResult {
  const { decision, problems } = reachDecision(plan, options);
  if (decision === undefined) return { problems };
  try {
    return { reach: answered(decision.work, decision, options.onProgress), problems };
  } catch (error) {
    if (error instanceof BeyondCalendarError) return { problems: [error.problem] };
    throw error;
  }
}

/** The question of `reach`, for whoever shares out its runs. */
export function reachDecision(
  source: Plan,
  options: ReachOptions,
): { decision?: Decision<Reach>; problems: Problem[] } {
  const { plan, problems: unknown } = applyScenario(source, options);
  const target = targetOf(plan, options);
  const problems = [...runProblems(options), ...target.problems, ...unknown];
  if (problems.length > 0) return { problems };
  const { list, notes } = everySwitch(plan);
  const scenarios = scenariosOf(plan, list);
  const standing = scenarios.model(scenarios.stands);
  const asWritten = planAsWritten(standing);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(standing, asWritten.beyond)] };
  const { finishBy, sum } = target;
  const targets: Targets = {
    confidence: options.confidence ?? standing.confidence,
    ...(finishBy === undefined ? {} : { finishByDay: dayNumber(finishBy) - standing.startDay }),
    ...(sum === undefined ? {} : { budget: sum }),
  };
  const gauging = { scenarios, draw: drawOf(plan, options), targets };
  return { decision: { ...gauging, plan, work: work(plan, gauging, target, notes) }, problems: [] };
}

function* work(
  plan: Plan,
  { scenarios, draw, targets }: Gauging,
  { finishBy, sum }: Target,
  notes: string[],
): Asking<Reach> {
  const { stands, switches, drawn } = scenarios;
  const free = switches.map((_, i) => i).filter((i) => !has(stands, i));
  const ask = (iterations: number): Question => ({
    scenarios,
    gauges: newGauges(iterations),
    targets,
    free,
    costs: switches.map(({ cost }) => cost),
  });
  const question = ask(draw.iterations);
  const few = ask(Math.min(draw.iterations, fewIterations));
  const count = (kind: Switch["kind"]) => free.filter((i) => switches[i]?.kind === kind).length;
  yield* question.gauges.need([stands], 0.02);
  const already = isReached(question, 0n);
  const found = already
    ? { ways: [], best: 0n }
    : free.length <= mostOptions
      ? yield* everySet(question)
      : yield* greedySets(question, few);
  const answer = already ? "already" : found.ways.length > 0 ? "ways" : "nothing";
  const ways: ReachWay[] = [];
  for (const set of found.ways) ways.push(yield* wayOf(question, few, set));
  const best = answer === "nothing" ? { best: yield* wayOf(question, few, found.best) } : {};
  return {
    stamp: stampOf(drawn, draw),
    plan: { title: plan.title, currency: plan.currency, start: plan.start },
    asked: {
      ...(finishBy === undefined ? {} : { finishBy }),
      ...(sum === undefined ? {} : { sum }),
      confidence: targets.confidence,
    },
    stands: outlookOf(question.gauges.of(stands), drawn, targets, draw.iterations),
    chance: hitsIn(question, 0n) / draw.iterations,
    options: { responses: count("response"), scope: count("scope"), capacity: count("capacity") },
    answer,
    ways,
    ...best,
    how: methodOf(already, free.length, question.gauges.tried + few.gauges.tried),
    notes,
  };
}

function methodOf(already: boolean, options: number, tried: number): SearchMethod {
  if (already)
    return { kind: "every-set", tried, text: "The plan as it stands was run: nothing more is needed." };
  if (options <= mostOptions) {
    const text =
      options < 2
        ? options === 1
          ? "The one option was tried."
          : "There was nothing to try."
        : `Every combination of the ${options} options was tried, ${tried} in all; nothing was assumed of how they ` +
          "work together.";
    return { kind: "every-set", tried, text };
  }
  return {
    kind: "greedy-exchange",
    tried,
    text:
      `With ${options} options not every combination was tried, but ${tried}: steps were added by the chance they buy ` +
      `for their money on the first ${fewIterations} futures, and all taken together; then each that is not needed ` +
      "was left out, the dearest first. A cheaper way may exist.",
  };
}
