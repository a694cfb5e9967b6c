import type { Estimate } from "../plan/types.ts";
import { solveIncreasing } from "./math/solveIncreasing.ts";
import { lawOf } from "./shapes/lawOf.ts";

/** Beyond these an event is as good as certain: the quantile functions are asked no further out. */
const edge = 1e-12;

/**
 * The chance that an estimate's value is at most x, not cut at zero: the exact quantile function, inverted.
 *
 * Error  1e-12, where the law's own quantile is exact. Cost  about ten quantiles.
 */
export function estimateChance(estimate: Estimate, x: number): number {
  switch (estimate.kind) {
    case "fixed":
      return estimate.value <= x ? 1 : 0;
    case "outcomes":
      return Math.min(
        1,
        estimate.outcomes.reduce((sum, { value, chance }) => (value <= x ? sum + chance : sum), 0),
      );
    case "range": {
      const { quantile } = lawOf(estimate);
      if (x <= quantile(edge)) return 0;
      if (x >= quantile(1 - edge)) return 1;
      return solveIncreasing(quantile, edge, 1 - edge, x);
    }
  }
}
