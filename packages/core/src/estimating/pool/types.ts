import type { Bounds, Estimate, Id, IsoDate, Shape, TimeUnit } from "../../plan/types.ts";
import type { InUnitOfEstimate, Ratio } from "../../units.ts";
import type { OpinionOf } from "../askable.ts";

/** One person's opinion in the bounds and unit of the pool. */
export interface PooledVoice {
  by: Id;
  date?: IsoDate;
  low: InUnitOfEstimate;
  likely: InUnitOfEstimate;
  high: InUnitOfEstimate;
  basis?: string;
  dissent?: string;
}

/** Several opinions of one estimate as one, and how far they are apart. Values in `unit`, or money for a cost. */
export interface Pooling {
  of: OpinionOf;
  unit: TimeUnit;
  shape: Shape;
  bounds: Bounds;
  /** The pooled three points, in `bounds`; certain where everybody is. */
  estimate: Estimate;
  low: InUnitOfEstimate;
  likely: InUnitOfEstimate;
  high: InUnitOfEstimate;
  /** By person's id. */
  voices: PooledVoice[];
  /** Whether some were stated in other bounds, shapes or units and had to be restated. */
  restated: boolean;
  /**
   * How far the curve of the pooled three points lies from the averaged quantiles, at most, between one time in twenty
   * and nineteen in twenty; a share of high - low. Nought for opinions of one location-scale family.
   */
  curveGap: Ratio;
  disagreement: Disagreement;
}

/** How far apart the opinions are. */
export interface Disagreement {
  /** `one`: a single voice. `apart`: ranges of two people have no value in common. */
  level: "one" | "agree" | "differ" | "apart";
  /** Smallest and largest likely value, and their difference as a share of the pooled range. */
  likelyLow: InUnitOfEstimate;
  likelyHigh: InUnitOfEstimate;
  spread: Ratio;
  /** What lies inside everybody's range; absent where nothing does. */
  common?: { low: InUnitOfEstimate; high: InUnitOfEstimate };
  /** Pairs whose ranges have no value in common, the one with the lower range first. */
  apart: [Id, Id][];
  /** Of three or more: whose likely value lies in nobody else's range; `others` is from the lowest to the highest of those. */
  farOut: {
    by: Id;
    side: "low" | "high" | "between";
    others: { low: InUnitOfEstimate; high: InUnitOfEstimate };
  }[];
  /**
   * The one-in-ten values if just one of them is right and nobody knows who: the chances averaged and not the values.
   * It has the same mean and never less variance (Lichtendahl et al. 2013), and is much wider when people are apart.
   */
  either: { low: InUnitOfEstimate; high: InUnitOfEstimate };
  /** The pooled values at the same two levels, to stand beside `either`. */
  pooled: { low: InUnitOfEstimate; high: InUnitOfEstimate };
}
