import type { Problem } from "../plan/problem.ts";
import type { IsoDate, Plan } from "../plan/types.ts";

/**
 * The plan looked at on a later day than its status date, with nothing more reported: what has not begun moves past that
 * day, and windows of risks that have closed by then count as passed. The plan itself where no day is given.
 */
export function asOf(plan: Plan, today: IsoDate | undefined): { plan: Plan; problems: Problem[] } {
  const { statusDate } = plan;
  if (today === undefined || today === statusDate) return { plan, problems: [] };
  if (statusDate === undefined || today > statusDate)
    return { plan: { ...plan, statusDate: today }, problems: [] };
  return {
    plan,
    problems: [
      {
        code: "before-status-date",
        severity: "error",
        path: "--today",
        received: today,
        rule: `It lies before the plan's status date, ${statusDate}: progress up to there is in the plan.`,
        remedy: `Give a day from ${statusDate} on, or leave it out.`,
      },
    ],
  };
}
