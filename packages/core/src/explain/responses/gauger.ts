import type { Plan } from "../../plan/types.ts";
import type { Draw } from "../variants.ts";
import type { Gauge, Targets } from "./gauge.ts";
import { type Ask, gaugeSets } from "./gauges.ts";
import { scenariosOf } from "./scenarios.ts";
import { everySwitch, responseSwitches } from "./switches.ts";

/** What a question is about: of which switches its sets are. */
export type About = "responses" | "reach";

/** Computes gauges of sets. */
export type Gauger = (
  draw: Draw,
  targets: Targets,
  ask: Pick<Ask, "sets" | "iterations">,
  onProgress?: (done: number, total: number) => void,
) => Gauge[];

/** Whoever has the plan can compute the gauges a question asks for: the same numbers everywhere. */
export function gauger(plan: Plan, about: About): Gauger {
  const { list } = about === "responses" ? responseSwitches(plan) : everySwitch(plan);
  const scenarios = scenariosOf(plan, list);
  return (draw, targets, ask, onProgress) => gaugeSets({ scenarios, draw, targets }, ask, onProgress);
}
