import type { Estimate } from "../plan/types.ts";
import { outcomeTable } from "./outcomeTable.ts";
import { lawOf } from "./shapes/lawOf.ts";

/**
 * The exact quantile of any estimate at p, in its own unit, not cut at zero. Of outcomes: the smallest value whose
 * cumulative chance reaches p, sums compared to within 1e-9.
 *
 * Cost  that of `lawOf`; for many probabilities of one estimate keep the law.
 */
export function estimateQuantile(estimate: Estimate, p: number): number {
  switch (estimate.kind) {
    case "fixed":
      return estimate.value;
    case "range":
      return lawOf(estimate).quantile(p);
    case "outcomes": {
      const { values, upTo } = outcomeTable(estimate);
      let k = 0;
      while (p > (upTo[k] as number)) k++;
      return values[k] as number;
    }
  }
}
