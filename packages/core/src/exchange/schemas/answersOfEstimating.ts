import type { Implied } from "../../estimating/interview/types.ts";
import type { Pooling } from "../../estimating/pool/types.ts";
import type { Adjustment, Scorecard } from "../../estimating/score/types.ts";
import type { StageKind } from "../../estimating/uplift/bounds.ts";
import type { UpliftedPlan } from "../../estimating/uplift/upliftedPlan.ts";
import type { Uplift, UpliftMix } from "../../estimating/uplift/upliftFor.ts";
import type { WaveComparison } from "../../estimating/wave/types.ts";
import type { Forecast, RunStamp } from "../../forecast/types.ts";
import type { Id, Opinion } from "../../plan/types.ts";
import type { Count, Money, Percent, Portion } from "../../units.ts";
import type { DrawnOf, PlanNamed, Scenario } from "./parts.ts";

/** What one person said of a task, and what it implies. `written` false: it was only shown. */
export interface InterviewAnswer {
  task: Id;
  opinion: Opinion;
  implied: Implied;
  written: boolean;
}

/** The opinions of one estimate, pooled. */
export interface PooledTask extends Pooling {
  id: Id;
  name: string;
}
/** Every estimate there are opinions of; with `--write` the one that was settled. */
export type PoolAnswer = { plan: PlanNamed; tasks: PooledTask[] } | SettledAnswer;
/** An estimate settled by the opinions of it. `written` false: it was only shown. */
export interface SettledAnswer extends PooledTask {
  task: Id;
  written: boolean;
  /** What the plan says of where the estimate comes from, naming the people. */
  basis: string;
}

/** A filled sheet, read: how many rows were taken, said what the plan says, or were empty. */
export interface SheetAnswer {
  taken: Count;
  unchanged: Count;
  empty: Count;
  /** False: nothing was new, or it was only shown. */
  written: boolean;
  /** What was taken, by task. */
  opinions: { task: Id; opinion: Opinion }[];
}

/** Outline tasks beside the detail that replaced them. */
export interface DetailAnswer extends Omit<WaveComparison, "problems"> {
  plan: PlanNamed;
  stamp: RunStamp;
}

/** A forecast, in short. */
export type ForecastInShort = DrawnOf & Pick<Forecast, "asWritten" | "committed">;
/** Past estimates against what happened; `scenario` with `--apply-to`. */
export interface ScorecardAnswer extends Scorecard {
  /** A plan's forecast as it is, and if its ranges leaned and missed as the scored ones did. */
  scenario?: { adjustment: Adjustment; plain: ForecastInShort; adjusted: ForecastInShort };
}

/** What the uplift is of: kinds with their parts, or one kind at a stage of appraisal. */
export type UpliftAsked =
  | {
      table: "bounds";
      mix: UpliftMix[];
      /** Of the contributing risks, as far as shown to be managed. */
      mitigated: Portion;
      uplift: Uplift;
    }
  | {
      table: "stages";
      kind: StageKind;
      stage: 1 | 2 | 3;
      /** Of the cost. */
      capital: Percent;
    };

/** An early estimate with an uplift from past projects, beside the forecast of the plan. */
export interface UpliftAnswer extends ForecastInShort, Scenario {
  asked: UpliftAsked;
  /** What managing those risks costs, added after the uplift. */
  management: Money;
  /** The plan as written with the uplift as it is now. */
  uplifted: UpliftedPlan;
  /** ... and with nothing mitigated, where that is another. */
  upper?: UpliftedPlan;
  hasMoney: boolean;
}
