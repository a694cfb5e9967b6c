import type { Brief, PreBrief } from "../../brief/types.ts";
import type { Comparison } from "../../explain/types.ts";
import type { CheckAnswer, Finding } from "../../findings/types.ts";
import type { Forecast } from "../../forecast/types.ts";
import type { Change, Id, IsoDate, Objection } from "../../plan/types.ts";
import type { Signature } from "../../signoff/signPlan.ts";
import type { ApprovalsState } from "../../signoff/types.ts";
import type { Drawn, PlanBound, PlanNamed, Scenario } from "./parts.ts";

/** What `check` finds; of a document that is no plan, what keeps it from being one. */
export type CheckedAnswer = CheckAnswer | { findings: Finding[] };

/** The approver's page; with `--for` the pre-brief of one of them. */
export type BriefAnswer = Brief | (PreBrief & Scenario);

/** What was signed; with `--conditions-met`, whose conditions are. */
export type SignAnswer = SignedAnswer | ConditionsMetAnswer;

/** Conditions of an approval that stands, and the day on which they were met. */
export interface ConditionsMetAnswer {
  plan: PlanBound;
  conditionsMet: { who: Id; by?: Id; date: IsoDate; conditions: string };
}

/** What was signed, and of which forecast. `written` false: it was only shown. */
export interface SignedAnswer extends Drawn {
  plan: PlanBound;
  signature: Omit<Signature, "errors">;
  written: boolean;
  /** Findings it was signed in spite of; absent where there are none. */
  errors?: Finding[];
  committed: Forecast["committed"];
  chance: Forecast["chance"];
}

/** Who has signed, what stands in the way, and what moved since the version that was signed. */
export interface ApprovalsAnswer extends ApprovalsState, Drawn {
  /** What would keep an approver from signing the plan as it is. */
  errors: Finding[];
  /** SHA-256 of the signed version, where it was found. */
  signedVersion?: string;
  /** From the signed version to the plan as it is; absent where they are the same, or none was found. */
  moved?: Pick<Comparison, "from" | "to" | "difference" | "moves">;
}

/** All objections; after one was logged, answered, accepted or opened again, that one. */
export interface ObjectionsAnswer {
  plan: PlanNamed;
  objections: Objection[];
}

/** The entry as it was written into the change log. */
export interface ChangeAnswer {
  plan: { title: string };
  change: Change;
}
