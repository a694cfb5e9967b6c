import type { Id } from "../../plan/types.ts";
import type { Count, InUnitBeside, Portion, Ratio } from "../../units.ts";

/** One finished task against what was said before it began. Working days of the task, or money. */
export interface ScoreEntry {
  task: Id;
  name: string;
  /** Title of the plan it is from. */
  plan: string;
  of: "duration" | "cost";
  unit: "working days" | "money";
  /** Who said it: of a settled estimate its `estimatedBy`, of an opinion the person. */
  by: Id[];
  /** One in ten below, likely, median and one in ten above, as it was said; effort divided by its people's shares. */
  p10: InUnitBeside;
  likely: InUnitBeside;
  p50: InUnitBeside;
  p90: InUnitBeside;
  actual: InUnitBeside;
  where: "below" | "inside" | "above";
  /** Outside by less than a day, which days recorded as whole cannot tell from inside. */
  within: boolean;
  /** Ids of register entries that occurred and touch it: an estimate of the work alone does not hold those. */
  events: Id[];
}

/** A share of k in n with its 95 % limits. */
export interface Proportion {
  k: Count;
  n: Count;
  share: Portion;
  low: Portion;
  high: Portion;
}

/** How estimates did: all of them, or one person's. */
export interface Score {
  n: Count;
  inside: Proportion;
  below: Count;
  above: Count;
  /** Above or below by less than a day. */
  within: Count;
  /** Touched by a register entry that occurred. */
  withEvents: Count;
  /** Actual over likely: mean and median; above 1 it took longer than likely. Entries with likely 0 are left out. */
  meanRatio: Ratio;
  medianRatio: Ratio;
  /** Actual over the median of what was said: about 1 where estimates lean neither way, however skew their ranges. */
  medianOfMedian: Ratio;
  /** What the share inside says about ranges meant to hold 8 times in 10. */
  ranges: "too-few" | "as-meant" | "too-narrow" | "too-wide";
  adjustment?: Adjustment;
}

/** What would have made these estimates right; applied only to a scenario that somebody asks for. */
export interface Adjustment {
  /** All three values are multiplied by this ... */
  shift: Ratio;
  /** ... then what lies above the likely value ... */
  highSide: Ratio;
  /** ... and what lies below it by these. */
  lowSide: Ratio;
  /** How many estimates it rests on. */
  n: Count;
}

/** How often past ranges held what happened, per estimator. */
export interface Scorecard {
  /** Settled estimates of time of finished tasks. */
  overall?: Score;
  /** Settled estimates of cost, where a finished task's `spent` is that cost and nothing else. */
  money?: Score;
  /** By person: their opinions where a task has them, otherwise the settled estimates they signed; by id. */
  people: { id: Id; name: string; score: Score }[];
  entries: ScoreEntry[];
  opinions: ScoreEntry[];
  /** Finished tasks that could not be scored, and why. */
  unscored: { task: Id; plan: string; why: "no-range" | "no-time" }[];
  /** Titles of the plans read, with the number of versions of each. */
  plans: { title: string; versions: Count }[];
}
