import type { Plan } from "../../plan/types.ts";
import type { Draw } from "../variants.ts";
import type { Gauge, Targets } from "./gauge.ts";
import { type Ask, gaugeSets } from "./gauges.ts";
import { scenariosOf } from "./scenarios.ts";
import { everySwitch, nameOfSwitch } from "./switches.ts";

/** Computes gauges of sets. */
export type Gauger = (
  draw: Draw,
  targets: Targets,
  ask: Pick<Ask, "sets" | "iterations">,
  onProgress?: (done: number, total: number) => void,
) => Gauge[];

/**
 * Whoever has the plan can compute the gauges a question asks for: the same numbers everywhere.
 *
 * @param names  What the question is about (`switchNames`): of these, in this order, its sets are.
 */
export function gauger(plan: Plan, names: readonly string[]): Gauger {
  const known = new Map(everySwitch(plan).list.map((one) => [nameOfSwitch(one), one]));
  const switches = names.map((name) => {
    const one = known.get(name);
    if (one === undefined) throw new Error(`Nothing called "${name}" is to be decided in this plan.`);
    return one;
  });
  const scenarios = scenariosOf(plan, switches);
  return (draw, targets, ask, onProgress) => gaugeSets({ scenarios, draw, targets }, ask, onProgress);
}
