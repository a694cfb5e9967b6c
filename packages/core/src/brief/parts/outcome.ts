import type { Forecast } from "../../forecast/types.ts";
import type { Approval, Plan, Stakeholder } from "../../plan/types.ts";
import { someoneOf } from "../someone.ts";
import type { BriefApprover, BriefOutcome } from "../types.ts";

/**
 * Who decides, and where each of them stands: those the plan lists under `approvals`, the last entry of each counting;
 * where it lists none, the stakeholders who may approve money.
 */
export function briefOutcome(plan: Plan, { committed }: Forecast): BriefOutcome {
  const someone = someoneOf(plan);
  const stakeholders = new Map(plan.stakeholders.map((each) => [each.id, each]));
  const last = new Map<string, Approval>(plan.approvals.map((approval) => [approval.who, approval]));
  const limited = plan.stakeholders.filter(({ approvesUpTo }) => approvesUpTo !== undefined);
  const all: Approval[] =
    last.size > 0 ? [...last.values()] : limited.map(({ id }) => ({ who: id, decision: "pending" }));
  return {
    approvers: all.map((one): BriefApprover => {
      const { who, decision, date, conditions, conditionsBy, conditionsMet, plan: hash } = one;
      const named = someone(who) ?? { id: who, name: who };
      const by = someone(one.by);
      return {
        ...named,
        decision,
        ...(date === undefined ? {} : { date }),
        ...(conditions === undefined ? {} : { conditions }),
        ...(conditionsBy === undefined ? {} : { conditionsBy }),
        ...(conditionsMet === undefined ? {} : { conditionsMet }),
        ...(by === undefined ? {} : { by }),
        ...(decision === "pending" || hash === undefined
          ? {}
          : { current: hash === plan.approvalSha256 || hash === plan.sha256 }),
        ...limitOf(stakeholders.get(who), committed.cost),
      };
    }),
  };
}

function limitOf(
  stakeholder: Stakeholder | undefined,
  sum: number,
): Pick<BriefApprover, "approvesUpTo" | "covers"> {
  const limit = stakeholder?.approvesUpTo;
  return limit === undefined ? {} : { approvesUpTo: limit, covers: sum <= limit };
}
