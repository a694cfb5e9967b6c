/**
 * What `--json` prints, by verb: here of what is computed from a plan, in the files beside it of the rest. The published
 * schemas are made from these types: see `packages/core/schemas`.
 */

import type { Budget } from "../../budget/types.ts";
import type { RoleMatrix } from "../../communicate/roles/types.ts";
import type { DueList } from "../../communicate/types.ts";
import type { AssumptionsTested } from "../../explain/assumptions/types.ts";
import type {
  Comparison,
  Confidence,
  Explanation,
  Future,
  Paths,
  PeopleLoad,
  Reach,
  Responses,
  Why,
} from "../../explain/types.ts";
import type { Forecast } from "../../forecast/types.ts";
import type { FigureDiffers } from "../../forecast/verify.ts";
import type { Count } from "../../units.ts";
import type {
  DetailAnswer,
  InterviewAnswer,
  PoolAnswer,
  ScorecardAnswer,
  SheetAnswer,
  UpliftAnswer,
} from "./answersOfEstimating.ts";
import type {
  ApprovalsAnswer,
  BriefAnswer,
  ChangeAnswer,
  CheckedAnswer,
  ObjectionsAnswer,
  SignAnswer,
} from "./answersOfSigning.ts";
import type { ExportAnswer, ImportAnswer } from "./answersOfTables.ts";
import type { HistoryAnswer, RecordedAnswer, TriggersAnswer } from "./answersUnderWay.ts";
import type { Drawn, DrawnOf, PlanNamed, Scenario } from "./parts.ts";

export type * from "./answersOfEstimating.ts";
export type * from "./answersOfSigning.ts";
export type * from "./answersOfTables.ts";
export type * from "./answersUnderWay.ts";
export type * from "./parts.ts";

/** What `forecast --json` prints. */
export type ForecastAnswer = Forecast & Scenario;
/** What `forecast --verify FILE --json` prints: whether a saved forecast came out the same again. */
export interface VerifyAnswer extends Drawn {
  /** Every figure is the same, to the last bit. */
  same: boolean;
  plan: PlanNamed;
  /** What made the saved forecast; `version` is what ran it again. */
  savedVersion: string;
  /** How many values were compared, and how many of them are not the same. */
  compared: Count;
  differing: Count;
  /** The first that is not the same, in the order of the JSON; absent where all are. */
  first?: FigureDiffers;
  /** The first hundred. */
  differences: FigureDiffers[];
}
/** What `explain --json` prints. */
export type ExplainAnswer = Explanation & Scenario;
/** What `responses --json` prints. */
export type ResponsesAnswer = Responses & Scenario;
/** What `reach --json` prints. */
export type ReachAnswer = Reach & Scenario;
/** What `assumptions --json` prints. */
export type AssumptionsAnswer = AssumptionsTested & Scenario;
/** What `people --json` prints. */
export type PeopleAnswer = PeopleLoad & Scenario;
/** What `paths --json` prints. */
export type PathsAnswer = Paths & Scenario;
/** What `confidence --json` prints. */
export type ConfidenceAnswer = Confidence & Scenario;
/** What `money --json` prints. */
export type MoneyAnswer = Budget & Scenario;
/** What `future --json` prints. */
export type FutureAnswer = Future & Scenario;
/** What `why --json` prints. */
export type WhyAnswer = Why & Scenario;
/** What `compare --json` prints. */
export type CompareAnswer = Comparison;
/** What `roles --json` prints. */
export type RolesAnswer = RoleMatrix;
/** What `inform --json` prints. */
export type InformAnswer = DueList & DrawnOf;

/** Everything that is printed as JSON, by verb: what is not here has no schema, and the command cannot print it. */
export interface AnswersByVerb {
  forecast: ForecastAnswer;
  verify: VerifyAnswer;
  explain: ExplainAnswer;
  responses: ResponsesAnswer;
  reach: ReachAnswer;
  assumptions: AssumptionsAnswer;
  people: PeopleAnswer;
  paths: PathsAnswer;
  confidence: ConfidenceAnswer;
  money: MoneyAnswer;
  future: FutureAnswer;
  why: WhyAnswer;
  compare: CompareAnswer;
  brief: BriefAnswer;
  sign: SignAnswer;
  approvals: ApprovalsAnswer;
  object: ObjectionsAnswer;
  change: ChangeAnswer;
  record: RecordedAnswer;
  history: HistoryAnswer;
  triggers: TriggersAnswer;
  check: CheckedAnswer;
  interview: InterviewAnswer;
  pool: PoolAnswer;
  sheet: SheetAnswer;
  detail: DetailAnswer;
  scorecard: ScorecardAnswer;
  uplift: UpliftAnswer;
  export: ExportAnswer;
  import: ImportAnswer;
  inform: InformAnswer;
  roles: RolesAnswer;
}
