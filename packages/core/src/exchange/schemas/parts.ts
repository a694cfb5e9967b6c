import type { Forecast, RunStamp } from "../../forecast/types.ts";

/** What was left out of the plan or taken in for this answer, by id. */
export interface Scenario {
  scenario?: { with?: readonly string[]; without?: readonly string[] };
}

/** How a forecast was drawn: with it the same figures come again. */
export type Drawn = Pick<RunStamp, "seed" | "iterations" | "version" | "design">;
/** ... and of which plan. */
export interface DrawnOf extends Drawn {
  plan: Forecast["plan"];
}

/** A plan and its hash, SHA-256 in hex. */
export interface PlanNamed {
  title: string;
  sha256: string;
}
/** ... and the hash an approval is bound to. */
export interface PlanBound extends PlanNamed {
  approvalSha256: string;
}
