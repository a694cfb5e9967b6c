import { applyScenario } from "../plan/applyScenario.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";
import type { Design } from "../sampling/design.ts";
import { type AsWritten, planAsWritten } from "../simulate/asWritten.ts";
import { beyondCalendar } from "../simulate/beyondCalendar.ts";
import { compile } from "../simulate/compile.ts";
import type { Model } from "../simulate/model.ts";
import { BeyondCalendarError } from "./stage.ts";
import type { Draw } from "./variants.ts";

/** What explanations of one plan may be asked with. */
export interface ExplainingOptions {
  /** Defaults: the plan's own. */
  iterations?: number;
  seed?: string;
  /** Default `latin-hypercube`. */
  design?: Design;
  /** Ids taken in and left out, as for `forecast`. */
  with?: readonly string[];
  without?: readonly string[];
  onProgress?: (done: number, total: number) => void;
}

/** What is explained: the plan with its scenario, compiled and as written, and the dice. */
export interface Subject {
  model: Model;
  asWritten: AsWritten;
  draw: Draw;
}

/** The dice of a run: what was asked for, else the plan's own. */
export function drawOf(plan: Plan, { seed, iterations, design }: ExplainingOptions): Draw {
  return {
    seed: seed ?? plan.seed,
    iterations: iterations ?? plan.iterations,
    design: design ?? "latin-hypercube",
  };
}

/**
 * Explains a plan: applies the scenario, compiles, and hands the subject over; whatever stands in the way is a problem.
 *
 * @param unfit   Problems of the question itself; listed with the scenario's, before anything is computed.
 * @param change  What the question does to the plan before it is compiled.
 */
export function explaining<R extends { problems: Problem[] }>(
  plan: Plan,
  options: ExplainingOptions,
  explain: (subject: Subject) => R,
  { unfit = [], change = (same) => same }: { unfit?: Problem[]; change?: (plan: Plan) => Plan } = {},
): R | { problems: Problem[] } {
  const scenario = applyScenario(plan, options);
  const problems = [...unfit, ...scenario.problems];
  if (problems.length > 0) return { problems };
  const model = compile(change(scenario.plan));
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
  try {
    return explain({ model, asWritten, draw: drawOf(plan, options) });
  } catch (error) {
    if (error instanceof BeyondCalendarError) return { problems: [error.problem] };
    throw error;
  }
}
