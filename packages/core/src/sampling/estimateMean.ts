import type { Estimate } from "../plan/types.ts";
import { lawOf } from "./shapes/lawOf.ts";

/** The exact mean of any estimate, in its own unit, not cut at zero. */
export function estimateMean(estimate: Estimate): number {
  switch (estimate.kind) {
    case "fixed":
      return estimate.value;
    case "range":
      return lawOf(estimate).mean;
    case "outcomes": {
      let sum = 0;
      for (const { value, chance } of estimate.outcomes) sum += value * chance;
      return sum;
    }
  }
}
