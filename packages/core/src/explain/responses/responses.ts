import { applyScenario } from "../../plan/applyScenario.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import type { Model } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { BeyondCalendarError } from "../stage.ts";
import type { BestSet, Objective, ResponseEffect, Responses, ResponseWorth } from "../types.ts";
import { bestSet, idleMembers } from "./bestSet.ts";
import { drawOf, type RunOptions, runProblems } from "./drawOf.ts";
import { effectOf } from "./effectOf.ts";
import { outlookOf, type Targets } from "./gauge.ts";
import { type Asking, answered, type Gauges, type Gauging, newGauges } from "./gauges.ts";
import { type SwitchSet, scenariosOf } from "./scenarios.ts";
import { has, only } from "./sets.ts";
import { responseSwitches, type Switch } from "./switches.ts";

/** Which responses are looked at, and what may be spent on them. */
export interface ResponsesOptions extends RunOptions {
  /** Also: which responses not adopted yet to adopt with this much money. */
  sum?: number;
  /** What the best set is best in; default `date`. */
  objective?: Objective;
}
/** What each response costs and buys, or why that cannot be told. */
export interface ResponsesResult {
  responses?: Responses;
  problems: Problem[];
}

/** A question about decisions, ready to be worked on: what is gauged, and the work that asks for it. */
export interface Decision<T> extends Gauging {
  /** The plan asked about, with what was taken in and left out beforehand. */
  plan: Plan;
  work: Asking<T>;
}

/**
 * What each response buys: the change of the committed date and sum, of the chances asked about, of lateness and of
 * the mean cost; alone, and given what is adopted. With `sum`, the best set of responses for that much money.
 *
 * Everything runs on the forecast's own draws, so that differences are differences of the plans and not noise.
 *
 * Problems are values. Cost: two runs per response, each only of what it reaches; for the best set see `bestSet`.
 */
export function responses(plan: Plan, options: ResponsesOptions = {}): ResponsesResult {
  const { decision, problems } = responsesDecision(plan, options);
  if (decision === undefined) return { problems };
  try {
    return { responses: answered(decision.work, decision, options.onProgress), problems };
  } catch (error) {
    if (error instanceof BeyondCalendarError) return { problems: [error.problem] };
    throw error;
  }
}

/** The question of `responses`, for whoever shares out its runs. */
export function responsesDecision(
  source: Plan,
  options: ResponsesOptions,
): { decision?: Decision<Responses>; problems: Problem[] } {
  const { plan, problems: unknown } = applyScenario(source, options);
  const problems = [...runProblems(options), ...ownProblems(plan, options), ...unknown];
  if (problems.length > 0) return { problems };
  const { list: all, notes } = responseSwitches(plan);
  const left = new Set(options.without ?? []);
  // What the call leaves out is settled: neither it nor an answer to it is weighed.
  const list = all.filter((one) => !left.has(one.id) && !(one.kind === "response" && left.has(one.entry.id)));
  const scenarios = scenariosOf(plan, list);
  const standing = scenarios.model(scenarios.stands);
  const asWritten = planAsWritten(standing);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(standing, asWritten.beyond)] };
  const { finishByDay, budget } = standing;
  const targets: Targets = {
    confidence: options.confidence ?? standing.confidence,
    ...(finishByDay === undefined ? {} : { finishByDay }),
    ...(budget === undefined ? {} : { budget }),
  };
  const gauging = { scenarios, draw: drawOf(plan, options), targets };
  return {
    decision: { ...gauging, plan, work: work(plan, gauging, standing, options, notes) },
    problems: [],
  };
}

function* work(
  plan: Plan,
  gauging: Gauging,
  standing: Model,
  options: ResponsesOptions,
  notes: string[],
): Asking<Responses> {
  const { scenarios, draw, targets } = gauging;
  const { stands, switches } = scenarios;
  const { finishBy, budget } = plan.commitment;
  const gauges = newGauges(draw.iterations);
  yield* gauges.need(
    [0n, stands, ...switches.flatMap((_, i) => [only(i), stands ^ only(i)])],
    options.sum === undefined ? 1 : 0.2,
  );
  const effect = (without: SwitchSet, set: SwitchSet): ResponseEffect =>
    effectOf(gauges.of(without), gauges.of(set), targets, gauges.n);
  const found = switches.map((one, i): ResponseWorth => {
    const { response, entry } = one as Extract<Switch, { kind: "response" }>;
    return {
      id: one.id,
      action: one.name,
      entry: { id: entry.id, name: entry.name },
      adopted: response.adopted,
      cost: one.cost,
      alone: effect(0n, only(i)),
      given: effect(stands & ~only(i), stands | only(i)),
    };
  });
  found.sort((a, b) => b.given.netWorth - a.given.netWorth || (a.id < b.id ? -1 : 1));
  const outlook = (set: SwitchSet) => outlookOf(gauges.of(set), standing, targets, gauges.n);
  const best = yield* bestOf(gauging, options, gauges);
  return {
    stamp: stampOf(standing, draw),
    plan: { title: plan.title, currency: plan.currency, start: plan.start },
    confidence: targets.confidence,
    asked: {
      ...(finishBy === undefined ? {} : { finishBy }),
      ...(budget === undefined ? {} : { budget }),
    },
    none: outlook(0n),
    stands: outlook(stands),
    responses: found,
    ...(best === undefined ? {} : { best }),
    notes,
  };
}

function* bestOf(
  { scenarios, targets }: Gauging,
  { sum, objective = "date" }: ResponsesOptions,
  gauges: Gauges,
): Asking<BestSet | undefined> {
  if (sum === undefined) return undefined;
  const { stands, switches, drawn } = scenarios;
  const free = switches.map((_, i) => i).filter((i) => !has(stands, i));
  const costs = switches.map(({ cost }) => cost);
  const { added, cost, how } = yield* bestSet(scenarios, { sum, objective, free, costs }, gauges);
  const idle = yield* idleMembers(scenarios, added, free, gauges);
  const ids = (members: readonly number[]) => members.map((i) => (switches[i] as Switch).id);
  return {
    sum,
    objective,
    ids: ids(free.filter((i) => has(added, i))),
    idle: ids(idle),
    cost,
    outlook: outlookOf(gauges.of(stands | added), drawn, targets, gauges.n),
    effect: effectOf(gauges.of(stands), gauges.of(stands | added), targets, gauges.n),
    how,
  };
}

const objectives: readonly Objective[] = ["date", "chance", "worth"];

function ownProblems(plan: Plan, { sum, objective }: ResponsesOptions): Problem[] {
  const problems: Problem[] = [];
  const report = (path: string, received: unknown, rule: string, remedy: string) =>
    problems.push({
      code: "option-value",
      severity: "error",
      path,
      received: String(received),
      rule,
      remedy,
    });
  if (sum !== undefined && !(Number.isFinite(sum) && sum >= 0)) {
    report("--sum", sum, "It must be money, 0 or more.", "Write a plain number, e.g. 10000.");
  }
  if (objective === undefined) return problems;
  if (!objectives.includes(objective)) {
    report("--aim", objective, "There is no such objective.", `Write one of: ${objectives.join(", ")}.`);
  } else if (objective === "chance" && plan.commitment.finishBy === undefined) {
    const remedy = "Add `finishBy` to the plan's `commitment`, or choose date or worth.";
    report("--aim", objective, "The plan asks for no date, so there is no chance of it.", remedy);
  }
  return problems;
}
