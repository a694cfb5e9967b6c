import type { Budget } from "../../budget/types.ts";
import type { RoleMatrix } from "../../communicate/roles/types.ts";
import type { DueList } from "../../communicate/types.ts";
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

/** What was left out of the plan or taken in for this answer, by id. */
export interface Scenario {
  scenario?: { with?: string[]; without?: string[] };
}

/** How a forecast was drawn: with it the same figures come again. */
export interface Drawn {
  plan: { title: string; sha256: string; currency: string; start: string };
  seed: string;
  iterations: number;
  version: string;
  design: "latin-hypercube" | "plain";
}

/** What `--json` prints, by verb. The published schemas are made from these types: see `packages/core/schemas`. */
export type ForecastAnswer = Forecast & Scenario;
export type ExplainAnswer = Explanation & Scenario;
export type ResponsesAnswer = Responses & Scenario;
export type ReachAnswer = Reach & Scenario;
export type PeopleAnswer = PeopleLoad & Scenario;
export type PathsAnswer = Paths & Scenario;
export type ConfidenceAnswer = Confidence & Scenario;
export type MoneyAnswer = Budget & Scenario;
export type FutureAnswer = Future & Scenario;
export type WhyAnswer = Why & Scenario;
export type CompareAnswer = Comparison;
export type RolesAnswer = RoleMatrix;
export type InformAnswer = DueList & Drawn;
