import type { Approval, Id, IsoDate, Plan } from "../plan/types.ts";
import { hasLapsed } from "./hasLapsed.ts";
import type { ApprovalsState, ApproverState } from "./types.ts";

/**
 * Who has signed what. A signature is bound to the hash of the plan without approvals, objections, changes and
 * progress: recording progress keeps it, changing the plan does not.
 *
 * @param sum  Money asked for: the committed cost; without it the plan's budget counts.
 * @param today  The day of today; the later of it and the status date says whether conditions have lapsed.
 */
export function approvalsState(
  plan: Plan,
  sum = plan.commitment.budget,
  today: IsoDate | undefined = undefined,
): ApprovalsState {
  const now = [today, plan.statusDate].reduce((a, b) => ((b ?? "") > (a ?? "") ? b : a));
  const asked = new Map<Id, Approval>();
  for (const approval of plan.approvals) {
    const before = asked.get(approval.who);
    // Signed again: the later one counts, and of two of one day the one further down.
    if (before === undefined || (approval.date ?? "") >= (before.date ?? ""))
      asked.set(approval.who, approval);
  }
  const approvers = [...asked.values()].map((approval) => stateOf(plan, approval, sum, now));
  approvers.push(...missingApprovers(plan, approvers, sum));
  const dates = approvers.flatMap(({ date, signed }) =>
    signed === undefined || date === undefined ? [] : [date],
  );
  const lastSigned = dates.sort().at(-1);
  const { reserve } = plan.commitment;
  return {
    plan: { title: plan.title, currency: plan.currency, approvalSha256: plan.approvalSha256 },
    ...(sum === undefined ? {} : { sum }),
    ...(reserve === undefined ? {} : { reserve }),
    overall: overallOf(approvers),
    approvers,
    open: plan.objections.filter(({ state }) => state === "open").map(({ id }) => id),
    ...(lastSigned === undefined ? {} : { lastSigned }),
    unexplained: unexplainedOf(plan, approvers),
  };
}

function stateOf(
  plan: Plan,
  approval: Approval,
  sum: number | undefined,
  now: IsoDate | undefined,
): ApproverState {
  const { who, decision, date, conditions, conditionsBy, conditionsMet, by, plan: signed } = approval;
  const said = decision === "approve" || decision === "approve-subject-to";
  const covers = signed !== undefined && signed === plan.approvalSha256;
  const limit = limitOf(plan, who);
  return {
    ...personOf(plan, who),
    state: !said ? (decision === "rework" ? "rework" : "pending") : covers ? "covers" : "stale",
    decision,
    ...(date === undefined ? {} : { date }),
    ...(conditions === undefined ? {} : { conditions }),
    ...(conditionsBy === undefined ? {} : { conditionsBy }),
    ...(conditionsMet === undefined ? {} : { conditionsMet }),
    lapsed: now !== undefined && hasLapsed(approval, now),
    ...(by === undefined ? {} : { by }),
    ...(signed === undefined ? {} : { signed }),
    ...(limit === undefined ? {} : { limit }),
    aboveLimit: isAbove(sum, limit),
  };
}

/** Name, role and delegate of a person or a stakeholder. */
export function personOf(plan: Plan, who: Id): { who: Id; name: string; role?: string; delegate?: Id } {
  const stakeholder = plan.stakeholders.find(({ id }) => id === who);
  const one = stakeholder ?? plan.people.find(({ id }) => id === who);
  const { role } = one ?? {};
  const delegate = stakeholder?.delegate;
  return {
    who,
    name: one?.name ?? who,
    ...(role === undefined ? {} : { role }),
    ...(delegate === undefined ? {} : { delegate }),
  };
}

export function limitOf(plan: Plan, who: Id): number | undefined {
  return plan.stakeholders.find(({ id }) => id === who)?.approvesUpTo;
}

/** Above by more than half a unit of money: a limit is a round sum. */
export function isAbove(sum: number | undefined, limit: number | undefined): boolean {
  return sum !== undefined && limit !== undefined && sum > limit + 0.5;
}

/** Where nobody who was asked may approve the sum: all who may, the least limit first. One of them will do. */
function missingApprovers(
  plan: Plan,
  approvers: readonly ApproverState[],
  sum: number | undefined,
): ApproverState[] {
  if (sum === undefined || approvers.some(({ limit }) => limit !== undefined && !isAbove(sum, limit)))
    return [];
  return plan.stakeholders
    .flatMap(({ id, approvesUpTo: limit }) =>
      limit === undefined || isAbove(sum, limit) ? [] : [{ id, limit }],
    )
    .sort((a, b) => a.limit - b.limit || (a.id < b.id ? -1 : 1))
    .map(({ id, limit }) => ({
      ...personOf(plan, id),
      state: "missing",
      decision: "pending",
      limit,
      lapsed: false,
      aboveLimit: false,
    }));
}

function overallOf(approvers: readonly ApproverState[]): ApprovalsState["overall"] {
  const is = (state: ApproverState["state"]): boolean => approvers.some((one) => one.state === state);
  if (approvers.every(({ state }) => state === "missing")) return "not-asked";
  if (is("rework")) return "rework";
  if (is("stale")) return "outdated";
  if (approvers.some(({ lapsed }) => lapsed)) return "lapsed";
  if (is("pending") || is("missing")) return "waiting";
  const isOpen = ({ decision, conditionsMet }: ApproverState): boolean =>
    decision === "approve-subject-to" && conditionsMet === undefined;
  return approvers.some(isOpen) ? "on-conditions" : "approved";
}

/** A changed plan needs a reason and somebody who agreed: GAO-16-89G, best practice 10 (digest read). */
function unexplainedOf(plan: Plan, approvers: readonly ApproverState[]): ApprovalsState["unexplained"] {
  const stale = approvers.filter(({ state }) => state === "stale");
  if (stale.length === 0) return undefined;
  const signed = stale.reduce((last: IsoDate, { date = "" }) => (date > last ? date : last), "");
  const since = plan.changes.filter(({ date = "" }) => date >= signed);
  if (!since.some(({ what, why }) => what !== undefined && why !== undefined)) return "no-entry";
  return since.some(({ approvedBy }) => approvedBy !== undefined) ? undefined : "no-approver";
}
