import { rankSelector } from "../../../forecast/rankSelector.ts";
import { rankOf } from "../../../forecast/ranks.ts";
import type { Plan } from "../../../plan/types.ts";
import { compile } from "../../../simulate/compile.ts";
import { BeyondCalendarError, runVariants } from "../../variants.ts";
import type { Terms } from "./terms.ts";
import { workingDaysFrom } from "./workingDaysFrom.ts";

/** Committed working days and money of a plan. */
export type Value = readonly [workingDays: number, money: number];

/**
 * Committed values of plans on the same draws, in the terms of a comparison; undefined for a plan whose work runs
 * past what calendars cover. Whoever computes them, the same numbers.
 */
export function valuesOfPlans(
  terms: Terms,
  plans: readonly Plan[],
  onProgress?: (done: number, total: number) => void,
): (Value | undefined)[] {
  const { draw, confidence, newer } = terms;
  const workingDays = workingDaysFrom(newer, terms.earliest);
  const select = rankSelector(draw.iterations);
  const ranks = [rankOf(confidence, draw.iterations)];
  return plans.map((plan, at) => {
    try {
      const [value] = runVariants(draw, [{ model: compile(plan) }], ({ finish, cost }): Value => {
        const [day = 0] = select(finish, ranks);
        const [sum = 0] = select(cost, ranks);
        return [workingDays(day, plan.start), sum];
      });
      onProgress?.(at + 1, plans.length);
      return value;
    } catch (error) {
      if (error instanceof BeyondCalendarError) return undefined;
      throw error;
    }
  });
}
