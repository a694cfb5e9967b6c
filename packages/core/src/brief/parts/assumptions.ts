import type { Plan } from "../../plan/types.ts";
import { someoneOf } from "../someone.ts";
import type { BriefAnswers, BriefAssumption } from "../types.ts";

/**
 * What the plan counts on, the most load-bearing first: by how far the commitment would move were it wrong, as a part
 * of the contingency in days or in money, whichever is more. Closed ones are left out.
 */
export function briefAssumptions(plan: Plan, { assumptions, forecast }: BriefAnswers): BriefAssumption[] {
  const someone = someoneOf(plan);
  const bars = new Map(assumptions.map((bar) => [bar.id, bar]));
  const { contingency } = forecast;
  const part = (amount: number, whole: number) => Math.abs(amount) / Math.max(1e-9, Math.abs(whole));
  const reach = ({ ifWrong }: BriefAssumption) =>
    ifWrong === undefined
      ? 0
      : Math.max(
          Math.abs(ifWrong.workingDays) < 1e-9 ? 0 : part(ifWrong.workingDays, contingency.workingDays),
          Math.abs(ifWrong.money) < 1e-6 ? 0 : part(ifWrong.money, contingency.money),
        );
  return plan.assumptions
    .filter(({ status }) => status !== "closed")
    .map((one): BriefAssumption => {
      const owner = someone(one.owner);
      const occurred = one.status === "occurred";
      return {
        id: one.id,
        statement: one.name,
        chanceWrong: one.probability,
        ...(owner === undefined ? {} : { owner }),
        ...(one.reviewBy === undefined ? {} : { reviewBy: one.reviewBy }),
        ...(one.signpost === undefined ? {} : { signpost: one.signpost }),
        ...(one.tripped === undefined ? {} : { tripped: one.tripped }),
        occurred,
        ...(occurred ? {} : { ifWrong: bars.get(one.id)?.high ?? { workingDays: 0, money: 0 } }),
      };
    })
    .sort(
      (a, b) =>
        Number(b.occurred) - Number(a.occurred) ||
        Number(b.tripped !== undefined) - Number(a.tripped !== undefined) ||
        reach(b) - reach(a) ||
        (a.id < b.id ? -1 : 1),
    );
}
