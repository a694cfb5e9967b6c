import type { PlanMeasure } from "../types.ts";
import type { MeasureRule } from "./measureRules.ts";

/** What was counted, or reckoned; or why nothing was. */
export type Taken = { count: number; of?: number } | { value: number } | string;

/**
 * A measure beside its threshold. At exactly the threshold it is kept; values that differ by at most 1e-9 are equal.
 */
export function withThreshold(rule: MeasureRule, taken: Taken): PlanMeasure {
  if (typeof taken === "string") return { ...rule, reason: taken };
  const value = "value" in taken ? taken.value : taken.count / (taken.of ?? 1);
  const counted = "of" in taken && taken.of !== undefined ? { count: taken.count, of: taken.of } : {};
  const within = rule.bound === "at most" ? value <= rule.threshold + 1e-9 : value >= rule.threshold - 1e-9;
  return { ...rule, value, ...counted, within };
}
