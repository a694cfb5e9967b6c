import type { Plan } from "../../plan/types.ts";
import type { BriefAnswers, BriefWorth } from "../types.ts";

/** Benefit against cost, and what lateness costs: only what the plan states. */
export function briefWorth(plan: Plan, { forecast, confidence }: BriefAnswers): BriefWorth {
  const { appraisal, lateness } = forecast;
  const valued = plan.benefits.filter(({ amount, worth }) => (amount ?? worth) !== undefined).length;
  const rates = confidence.lateness;
  const { benefits: _, ...net } = appraisal ?? { benefits: [] };
  return {
    // An appraisal without a benefit worth money would be the cost under another name.
    ...(appraisal === undefined || valued === 0
      ? {}
      : { appraisal: net as Omit<typeof appraisal, "benefits"> }),
    benefits: { stated: plan.benefits.length, valued },
    ...(lateness === undefined || rates === undefined ? {} : { lateness: { ...lateness, ...rates } }),
  };
}
