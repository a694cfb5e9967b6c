import type { Plan } from "../plan/types.ts";
import { checkContext } from "./checkContext.ts";
import { measuresOf } from "./measures/planMeasures.ts";
import { findingsOf } from "./planFindings.ts";
import type { Finding, FindingOptions, PlanMeasure } from "./types.ts";

/** Findings and measures from one look at the plan: what `planFindings` and `planMeasures` answer. */
export function checkPlan(
  plan: Plan,
  options: FindingOptions = {},
): { findings: Finding[]; measures: PlanMeasure[] } {
  const context = checkContext(plan, options);
  return { findings: findingsOf(context), measures: measuresOf(context) };
}
