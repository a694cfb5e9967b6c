import type { Estimate, Plan } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/asWrittenValue.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import type { Adjustment } from "./types.ts";

/**
 * A plan as it would be if its ranges leaned and missed as past ones did: a scenario to look at, never a plan to keep.
 * Durations and efforts of tasks that have not started are restated as one-in-ten values and adjusted; certain values,
 * outcomes, money and the register stay. The hash stays that of the document.
 */
export function applyAdjustment(plan: Plan, adjustment: Adjustment): Plan {
  return {
    ...plan,
    tasks: plan.tasks.map((task) => {
      if (task.started !== undefined || task.finished !== undefined) return task;
      const { duration, effort } = task;
      return {
        ...task,
        ...(duration && { duration: adjusted(duration, adjustment) }),
        ...(effort && { effort: adjusted(effort, adjustment) }),
      };
    }),
  };
}

function adjusted(estimate: Estimate, { shift, highSide, lowSide }: Adjustment): Estimate {
  if (estimate.kind !== "range") return estimate;
  const likely = asWrittenValue(estimate);
  const low = Math.min(likely, estimateQuantile(estimate, 0.1));
  const high = Math.max(likely, estimateQuantile(estimate, 0.9));
  const { unit } = estimate;
  const value = shift * likely;
  const to = {
    low: Math.min(value, Math.max(0, shift * (likely - lowSide * (likely - low)))),
    high: shift * (likely + highSide * (high - likely)),
  };
  if (to.low === to.high) return { kind: "fixed", value, unit };
  const shape = estimate.shape === "triangular" ? "triangular" : "pert";
  return { kind: "range", low: to.low, likely: value, high: to.high, shape, bounds: "p10-p90", unit };
}
