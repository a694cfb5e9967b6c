import type { Problem } from "../../plan/problem.ts";
import type { Change, Id } from "../../plan/types.ts";
import type { Money, Ratio, WorkingDays } from "../../units.ts";

/** Working days from the first start to the last finish, on the plan's calendar, and money; one in ten at each end. */
export interface WaveRange {
  workingDays: { p10: WorkingDays; p50: WorkingDays; p90: WorkingDays };
  money: { p10: Money; p50: Money; p90: Money };
}

/** One outline task and the detail that took its place. */
export interface Wave {
  outline: { id: Id; name: string };
  detail: { id: Id; name: string }[];
  before: WaveRange;
  after: WaveRange;
  /** The detail again with every pair of its estimates correlated at `togetherCoefficient`, where there are two or more. */
  together?: WaveRange;
  /** Width of the range of days, one in ten to one in ten, after over before; absent where it was certain before. */
  widthRatio?: Ratio;
  /** The plan says that some of the detail's estimates move together. */
  correlated: boolean;
  /** Entries of the new plan's `changes`, not in the old one's, that name the outline task or some of its detail. */
  reasons: Change[];
}

/** An outline task beside the detail that replaced it: finish and cost before and after. */
export interface WaveComparison {
  waves: Wave[];
  /** Tasks of the old plan marked `outline` that are gone without detail, and those that are still there. */
  gone: { id: Id; name: string }[];
  still: { id: Id; name: string }[];
  problems: Problem[];
}
