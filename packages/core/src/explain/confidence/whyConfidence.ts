import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import { jointConfidence } from "../joint/jointConfidence.ts";
import { type ExplainingOptions, explaining, type Subject } from "../subject.ts";
import type { Confidence, ConfidenceStep } from "../types.ts";
import { runVariants } from "../variants.ts";
import { confidenceSteps } from "./confidenceSteps.ts";
import { type LatenessRates, latenessRates } from "./latenessRates.ts";
import { stampOf } from "./stampOf.ts";
import { standingAsWritten, standingAt } from "./standings.ts";
import { whereToStop } from "./whereToStop.ts";

/** Levels that are set side by side, with the one committed to. */
const usualLevels = [0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];

/** A plan without money holds days, and no sum that could be worth it. */
function notPriced(steps: readonly ConfidenceStep[]): string {
  const held = steps.some(({ cost }) => cost !== 0) ? "money" : "days";
  return (
    `The plan does not say what finishing late costs, so it cannot say which step is worth its ${held}. ` +
    "Add `lateness: { perWeek: ..., once: ... }`: what each week late costs the organisation, and being late at all."
  );
}

/** Which run the levels are compared on. */
export interface WhyConfidenceOptions extends ExplainingOptions {
  /** Default: the plan's own. */
  confidence?: number;
  /** The chance of keeping date and sum together that is wanted; default the level committed to. */
  joint?: number;
}

/** The levels side by side, or why they cannot be told. */
export interface WhyConfidenceResult {
  confidence?: Confidence;
  problems: Problem[];
}

/**
 * Why this confidence: the levels side by side with what each step buys, holds and avoids, where the next step costs
 * more than it avoids, and the chances of date and money together. The draws are the forecast's, so its percentiles
 * are these.
 *
 * Problems are values. Cost: one run of the model without criticality, and sorts of n.
 */
export function whyConfidence(plan: Plan, options: WhyConfidenceOptions = {}): WhyConfidenceResult {
  const explain = ({ model, asWritten, draw }: Subject): WhyConfidenceResult => {
    const confidence = options.confidence ?? model.confidence;
    const [answer] = runVariants(
      draw,
      [{ model }],
      (rows): Confidence => {
        const rates = latenessRates(model, draw);
        const levels = [...new Set([...usualLevels, confidence])].sort((a, b) => a - b);
        const steps = confidenceSteps(model, rows, levels, rates);
        return {
          stamp: stampOf(model, draw),
          plan: { title: plan.title, currency: plan.currency, start: plan.start },
          confidence,
          asWritten: standingAsWritten(model, asWritten),
          committed: standingAt(model, rows, confidence),
          steps,
          ...judged(steps, rates),
          joint: jointConfidence(
            model,
            { ...draw, ...rows },
            { confidence, joint: options.joint ?? confidence },
          ),
        };
      },
      options.onProgress,
    );
    return { ...(answer === undefined ? {} : { confidence: answer }), problems: [] };
  };
  return explaining(plan, options, explain, { change: priced });
}

/** Prices may be given without a date to be late after: here every date is one in turn, so any will do. */
function priced(plan: Plan): Plan {
  if (plan.lateness === undefined || (plan.lateness.after ?? plan.commitment.finishBy) !== undefined)
    return plan;
  return { ...plan, lateness: { ...plan.lateness, after: plan.start } };
}

function judged(
  steps: readonly ConfidenceStep[],
  rates: LatenessRates | undefined,
): Pick<Confidence, "lateness" | "stop" | "missing"> {
  if (rates === undefined) return { missing: notPriced(steps) };
  const stop = whereToStop(steps);
  const mean = (row: Float64Array) => row.reduce((sum, value) => sum + value, 0) / row.length;
  return {
    lateness: { perWeek: mean(rates.perWeek), once: mean(rates.once) },
    ...(stop === undefined ? {} : { stop }),
  };
}
