import type { Finding } from "../findings/types.ts";
import type { Approval, Id, IsoDate, Plan } from "../plan/types.ts";
import type { Money } from "../units.ts";

/** What an approver decides, and when. */
export interface Signature {
  /** Who decides. */
  who: Id;
  /** Who signs in their place; they must be the delegate the plan names. */
  by?: Id;
  decision: Exclude<Approval["decision"], "pending">;
  conditions?: string;
  /** The day by which the conditions have to be met. */
  conditionsBy?: IsoDate;
  /** Ids of open objections that the signer accepts as they stand. */
  accepts: readonly Id[];
  date: IsoDate;
  /** Money they sign for: the committed cost, else the budget. */
  sum?: Money;
  /** Findings that keep it from being approved (`errorsInTheWay`); left out where it is signed despite them. */
  errors?: readonly Finding[];
}

/** Keys of an approval that belong to one decision. */
const OF_A_DECISION = ["by", "conditions", "conditionsBy", "conditionsMet"] as const;

/**
 * What a decision puts into the entry of `approvals` of who decides, key by key, bound to the plan's hash. A key that is
 * undefined was said by their earlier decision and is not by this one: it goes.
 */
export function signatureEntry(plan: Plan, signature: Signature): Record<string, string | undefined> {
  const { who, by, decision, conditions, conditionsBy, date } = signature;
  const before = plan.approvals.findLast((approval) => approval.who === who);
  const gone = OF_A_DECISION.filter((key) => before?.[key] !== undefined);
  return {
    ...Object.fromEntries(gone.map((key) => [key, undefined])),
    who,
    ...(by === undefined ? {} : { by }),
    decision,
    date,
    ...(conditions === undefined ? {} : { conditions }),
    ...(conditionsBy === undefined ? {} : { conditionsBy }),
    plan: plan.approvalSha256,
  };
}
