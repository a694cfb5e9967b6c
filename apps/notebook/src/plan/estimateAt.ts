import type { Estimate, Plan } from "@leeway/core";
import { pathSteps } from "./path.ts";

/** The estimate at a path of the read plan, such as `tasks[3].duration`; undefined where none stands there. */
export function estimateAt(plan: Plan, path: string): Estimate | undefined {
  let value: unknown = plan;
  for (const step of pathSteps(path)) {
    if (typeof value !== "object" || value === null) return undefined;
    value = Reflect.get(value, step);
  }
  // Whatever stands in a plan and says its kind so is an estimate.
  return isEstimate(value) ? value : undefined;
}

function isEstimate(value: unknown): value is Estimate {
  if (typeof value !== "object" || value === null || !("kind" in value)) return false;
  return value.kind === "fixed" || value.kind === "range" || value.kind === "outcomes";
}
