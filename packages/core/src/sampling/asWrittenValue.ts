import type { Estimate } from "../plan/types.ts";

/**
 * The value an estimate stands for in the plan as written, in its own unit, not cut at zero: the likely value; the
 * midpoint of uniform; the median of normal and lognormal; the most probable outcome (of several, the smallest).
 */
export function asWrittenValue(estimate: Estimate): number {
  switch (estimate.kind) {
    case "fixed":
      return estimate.value;
    case "range":
      if (estimate.shape === "lognormal") return Math.sqrt(estimate.low) * Math.sqrt(estimate.high);
      if (estimate.shape === "uniform" || estimate.shape === "normal" || estimate.likely === undefined) {
        return estimate.low + (estimate.high - estimate.low) / 2;
      }
      return estimate.likely;
    case "outcomes": {
      let value = Number.NaN;
      let chance = 0;
      // Ascending values: only a clearly larger chance displaces a smaller value.
      for (const outcome of estimate.outcomes) {
        if (outcome.chance > chance + 1e-9) ({ value, chance } = outcome);
      }
      return value;
    }
  }
}
