import type { AgreedFrom } from "../../budget/left/types.ts";
import type { Id, IsoDate } from "../../plan/types.ts";
import type { Chance, Money, MoneyOrDays, Ratio } from "../../units.ts";

/** When the approvers are asked again. */
export type TriggerCondition =
  | "chanceOfDateBelow"
  | "chanceOfBudgetBelow"
  | "contingencyCoverBelow"
  | "signpost"
  | "finishLaterThan"
  | "costAbove"
  | "conditionsBy";

/**
 * `tripped`: the condition holds. `close`: it does not, but the sampling limits or five points of chance would make it.
 * `quiet`: neither. `unknown`: it cannot be measured, and `unknown` says why.
 */
export type TriggerState = "tripped" | "close" | "quiet" | "unknown";

/** A value as it stands, with its 95 % sampling limits. */
export interface Measured<V> {
  value: V;
  low: V;
  high: V;
}

/** Contingency left over exposure left in one kind; absent ratio: no exposure is left. */
export interface CoverNow {
  kind: "money" | "days";
  left: MoneyOrDays;
  exposure: MoneyOrDays;
  /** What is committed to now, with its sampling limits: no digit of the two above is surer than these. */
  committed: MoneyOrDays;
  low: MoneyOrDays;
  high: MoneyOrDays;
  ratio?: Ratio;
  state: "tripped" | "close" | "quiet";
}

/** One agreed trigger and where it stands. */
export interface TriggerNow {
  id: Id;
  name?: string;
  note?: string;
  condition: TriggerCondition;
  state: TriggerState;
  /** Within the sampling limits of the value on either side of the limit: another seed may say otherwise. */
  uncertain: boolean;
  /**
   * Of `chanceOfDateBelow` and `chanceOfBudgetBelow`; `asked` is the day or the sum that was agreed. Until somebody signs
   * that is what the plan asks for, and `onceSigned` what it commits to, which is agreed from then on.
   */
  chance?: Measured<Chance> & {
    limit: Chance;
    asked: IsoDate | Money;
    from: AgreedFrom;
    onceSigned?: IsoDate | Money;
  };
  /** Of `contingencyCoverBelow`: in money and in days, as far as each was agreed; the worse one decides. */
  cover?: { limit: Ratio; parts: CoverNow[] };
  /** Of `signpost`. */
  signpost?: {
    assumption: Id;
    statement: string;
    sign?: string;
    tripped?: IsoDate;
    status: "open" | "occurred" | "closed";
    /** The day on which it should have been looked at, where that has passed. */
    reviewDue?: IsoDate;
  };
  /** Of `finishLaterThan`. */
  finish?: Measured<IsoDate> & { limit: IsoDate };
  /** Of `costAbove`. */
  cost?: Measured<Money> & { limit: Money };
  /** Of `conditionsBy`: the conditions of an approval. Trips when their day has passed and they were not met. */
  approval?: { who: Id; name: string; conditions: string; by: IsoDate; met?: IsoDate };
  /** Why it cannot be measured. */
  unknown?: string;
}

/** All triggers of a plan at one forecast. */
export interface TriggersNow {
  currency: string;
  confidence: Chance;
  triggers: TriggerNow[];
}
