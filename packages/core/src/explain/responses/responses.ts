import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { BeyondCalendarError } from "../stage.ts";
import type { BestSet, Objective, ResponseEffect, Responses, ResponseWorth } from "../types.ts";
import type { Draw } from "../variants.ts";
import { bestSet, idleMembers } from "./bestSet.ts";
import { drawOf, type RunOptions, runProblems } from "./drawOf.ts";
import { effectOf } from "./effectOf.ts";
import { outlookOf, type Targets } from "./gauge.ts";
import { type Gauges, gaugesOf } from "./gauges.ts";
import { type Scenarios, scenariosOf } from "./scenarios.ts";
import { has, only } from "./sets.ts";
import { responseSwitches, type Switch } from "./switches.ts";

export interface ResponsesOptions extends RunOptions {
  /** Also: which responses not adopted yet to adopt with this much money. */
  sum?: number;
  /** What the best set is best in; default `date`. */
  objective?: Objective;
}
export interface ResponsesResult {
  responses?: Responses;
  problems: Problem[];
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
  const problems = [...runProblems(options), ...ownProblems(plan, options)];
  if (problems.length > 0) return { problems };
  const { list, notes } = responseSwitches(plan);
  const scenarios = scenariosOf(plan, list);
  const standing = scenarios.model(scenarios.stands);
  const asWritten = planAsWritten(standing);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(standing, asWritten.beyond)] };
  const draw = drawOf(plan, options);
  const { finishByDay, budget } = standing;
  const targets: Targets = {
    confidence: options.confidence ?? standing.confidence,
    ...(finishByDay === undefined ? {} : { finishByDay }),
    ...(budget === undefined ? {} : { budget }),
  };
  try {
    const gauges = gaugesOf(scenarios, draw, targets, options.onProgress);
    const { stands } = scenarios;
    gauges.need([0n, stands, ...list.flatMap((_, i) => [only(i), stands ^ only(i)])]);
    const effect = (without: bigint, set: bigint): ResponseEffect =>
      effectOf(gauges.of(without), gauges.of(set), targets, draw.iterations);
    const found = list.map((one, i): ResponseWorth => {
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
    const outlook = (set: bigint) => outlookOf(gauges.of(set), standing, targets, draw.iterations);
    const best = bestOf(scenarios, draw, targets, options, gauges);
    return {
      problems: [],
      responses: {
        stamp: stampOf(standing, draw),
        plan: { title: plan.title, currency: plan.currency, start: plan.start },
        confidence: targets.confidence,
        asked: askedOf(plan),
        none: outlook(0n),
        stands: outlook(stands),
        responses: found,
        ...(best === undefined ? {} : { best }),
        notes,
      },
    };
  } catch (error) {
    if (error instanceof BeyondCalendarError) return { problems: [error.problem] };
    throw error;
  }
}

function bestOf(
  scenarios: Scenarios,
  draw: Draw,
  targets: Targets,
  { sum, objective = "date", onProgress }: ResponsesOptions,
  gauges: Gauges,
): BestSet | undefined {
  if (sum === undefined) return undefined;
  const { stands, switches, drawn } = scenarios;
  const free = switches.map((_, i) => i).filter((i) => !has(stands, i));
  const costs = switches.map(({ cost }) => cost);
  const { added, cost, how } = bestSet(
    scenarios,
    draw,
    targets,
    { sum, objective, free, costs },
    gauges,
    onProgress,
  );
  const ids = (members: readonly number[]) => members.map((i) => (switches[i] as Switch).id);
  return {
    sum,
    objective,
    ids: ids(free.filter((i) => has(added, i))),
    idle: ids(idleMembers(scenarios, added, free, gauges)),
    cost,
    outlook: outlookOf(gauges.of(stands | added), drawn, targets, draw.iterations),
    effect: effectOf(gauges.of(stands), gauges.of(stands | added), targets, draw.iterations),
    how,
  };
}

function askedOf({ commitment }: Plan): Responses["asked"] {
  const { finishBy, budget } = commitment;
  return {
    ...(finishBy === undefined ? {} : { finishBy }),
    ...(budget === undefined ? {} : { budget }),
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
    report("--for", objective, "There is no such objective.", `Write one of: ${objectives.join(", ")}.`);
  } else if (objective === "chance" && plan.commitment.finishBy === undefined) {
    const remedy = "Add `finishBy` to the plan's `commitment`, or choose date or worth.";
    report("--for", objective, "The plan asks for no date, so there is no chance of it.", remedy);
  }
  return problems;
}
