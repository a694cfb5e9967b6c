import { planFindings } from "../findings/planFindings.ts";
import type { Finding, FindingOptions } from "../findings/types.ts";
import type { Plan } from "../plan/types.ts";

/**
 * Findings of the check of severity error that nobody has accepted: the plan contradicts its own promise, or its answer
 * would mean nothing, so it is not fit to be approved. Simulates nothing; what depends on chances needs the forecast.
 */
export function errorsInTheWay(plan: Plan, options: FindingOptions = {}): Finding[] {
  return planFindings(plan, options).filter(
    ({ severity, accepted }) => severity === "error" && accepted === undefined,
  );
}
