import { rankOf } from "../../forecast/ranks.ts";
import type { Gauge, Targets } from "../responses/gauge.ts";
import type { Gauges } from "../responses/gauges.ts";
import type { Scenarios, SwitchSet } from "../responses/scenarios.ts";
import { costOf, has } from "../responses/sets.ts";

/** What is to be reached, and with what. */
export interface Question {
  scenarios: Scenarios;
  gauges: Gauges;
  targets: Targets;
  /** Switches that may be turned on, and what each costs (by place in `scenarios.switches`). */
  free: readonly number[];
  costs: readonly number[];
}

/** Iterations that meet what is asked. */
export function hitsOf(gauge: Gauge, { finishByDay, budget }: Targets): number {
  if (budget === undefined) return gauge.onTime;
  return finishByDay === undefined ? gauge.inBudget : gauge.both;
}

/** Whether what is asked holds at the confidence: as a percentile would say, at its rank. */
export function isReached(question: Question, added: SwitchSet): boolean {
  const { gauges, targets } = question;
  return hitsIn(question, added) >= rankOf(targets.confidence, gauges.n);
}

export function hitsIn({ gauges, scenarios, targets }: Question, added: SwitchSet): number {
  return hitsOf(gauges.of(scenarios.stands | added), targets);
}

/** How much scope a set drops, what it costs, how many steps it has. */
export function burdenOf({ scenarios, costs, free }: Question, added: SwitchSet): [number, number, number] {
  let [dropped, steps] = [0, 0];
  for (const i of free) {
    if (!has(added, i)) continue;
    steps++;
    if (scenarios.switches[i]?.kind === "scope") dropped++;
  }
  return [dropped, costOf(added, costs), steps];
}
