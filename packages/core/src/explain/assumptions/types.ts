import type { Someone } from "../../brief/types.ts";
import type { Forecast, RunStamp } from "../../forecast/types.ts";
import type { Id, IsoDate } from "../../plan/types.ts";
import type { Chance, Money } from "../../units.ts";
import type { Effect, Standing } from "../types.ts";

/** What a plan counts on, and what it is worth that it holds: each assumption run as if it were false. */
export interface AssumptionsTested {
  plan: Pick<Forecast["plan"], "title" | "currency" | "start">;
  stamp: RunStamp;
  confidence: Chance;
  /** The plan as it stands, at the level: the assumptions as likely to be wrong as the plan says. */
  base: Standing;
  asked: { finishBy?: IsoDate; budget?: Money };
  chance: AskedChance;
  /** Furthest moved first. Those that are closed are left out: they can no longer prove wrong. */
  assumptions: AssumptionTested[];
}
/** Chances of what the plan asks for. */
export interface AskedChance {
  finishBy?: Chance;
  budget?: Chance;
  both?: Chance;
}

/** One assumption, whose word it is, how it would be noticed, and the plan with it false. */
export interface AssumptionTested {
  id: Id;
  statement: string;
  chanceWrong: Chance;
  owner?: Someone;
  signpost?: string;
  reviewBy?: IsoDate;
  /** The day its signpost was seen. */
  tripped?: IsoDate;
  /** No impact is stated, so the plan is the same without it. */
  noImpact?: true;
  /** It has proved wrong: every figure counts it, and nothing is left to suppose. */
  occurred?: true;
  /** Supposed false, everything else as it is, on the same draws; absent where that is settled. */
  ifFalse?: {
    standing: Standing;
    /** From the plan as it stands. */
    moved: Effect;
    /** From the plan in which it holds for certain. */
    againstHolding: Effect;
    chance: AskedChance;
  };
}
