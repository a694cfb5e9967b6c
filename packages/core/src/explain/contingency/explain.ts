import { applyScenario } from "../../plan/applyScenario.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { Design } from "../../sampling/design.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { compile } from "../../simulate/compile.ts";
import { measureVariants } from "../measureVariants.ts";
import type { Explanation } from "../types.ts";
import { BeyondCalendarError } from "../variants.ts";
import { type Ask, type Explained, explainSteps } from "./explainSteps.ts";

/** Which run is explained, and how many orders of causes are averaged over. */
export interface ExplainOptions {
  /** Defaults: the plan's own. */
  iterations?: number;
  seed?: string;
  confidence?: number;
  /** Default `latin-hypercube`. */
  design?: Design;
  /** Ids taken in and left out, as for a forecast. */
  with?: readonly string[];
  without?: readonly string[];
  /** Told in thousandths of the whole work. */
  onProgress?: (done: number, total: number) => void;
}

/** What the contingency is held for, or why that cannot be told. */
export interface ExplainResult {
  explanation?: Explanation;
  problems: Problem[];
}

/**
 * Why this much contingency: the difference between the committed level and the plan as written, in working days and
 * in money, split over its causes (shares), walked step by step (walk), and moved by one item at a time (tornado), all
 * on the draws of the forecast with the same seed, design and iterations. Shares and walk each add up to it.
 *
 * A share is a cause's part of the contingency, averaged over the orders in which causes may come; what would change
 * if the cause alone vanished is another question and stands beside it (`ifRemoved`).
 *
 * Problems are values; nothing is thrown. Cost: some hundred re-runs of the plan (see variants.ts).
 */
export function explain(plan: Plan, options: ExplainOptions = {}): ExplainResult {
  const ready = explained(plan, options);
  if (ready.explained === undefined) return { problems: ready.problems };
  const { model, draw, confidence } = ready.explained;
  try {
    const steps = explainSteps(ready.explained);
    let step = steps.next();
    while (step.done !== true) {
      const { settings, iterations } = step.value;
      const progress = progressWithin(step.value, options.onProgress);
      step = steps.next(measureVariants(model, { ...draw, iterations }, confidence, settings, progress));
    }
    options.onProgress?.(1000, 1000);
    return { explanation: step.value, problems: [] };
  } catch (error) {
    if (error instanceof BeyondCalendarError) return { problems: [error.problem] };
    throw error;
  }
}

/** The scenario of a plan, compiled, with all that is known before anything is drawn; or why there is none. */
export function explained(
  plan: Plan,
  options: ExplainOptions,
): { explained?: Explained; plan: Plan; problems: Problem[] } {
  const scenario = applyScenario(plan, options);
  if (scenario.problems.length > 0) return { plan, problems: scenario.problems };
  const model = compile(scenario.plan);
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { plan, problems: [beyondCalendar(model, asWritten.beyond)] };
  const draw = {
    seed: options.seed ?? scenario.plan.seed,
    design: options.design ?? "latin-hypercube",
    iterations: options.iterations ?? scenario.plan.iterations,
  };
  const confidence = options.confidence ?? model.confidence;
  return { explained: { model, asWritten, draw, confidence }, plan: scenario.plan, problems: [] };
}

/** A listener for one part of the work, told in thousandths of the whole. */
export function progressWithin(
  { from, to }: Ask,
  tell: ((done: number, total: number) => void) | undefined,
): ((done: number, total: number) => void) | undefined {
  return tell && ((done, total) => tell(Math.floor(1000 * (from + ((to - from) * done) / total)), 1000));
}
