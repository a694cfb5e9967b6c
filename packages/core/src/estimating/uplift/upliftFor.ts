import type { Percent, Portion } from "../../units.ts";
import {
  STAGE_UPLIFTS,
  type StageKind,
  UPLIFT_BOUNDS,
  type UpliftBounds,
  type UpliftKind,
} from "./bounds.ts";

/** What is built, by kind, with the part of it that each kind is. */
export interface UpliftMix {
  kind: UpliftKind;
  /** Parts sum to 1. */
  part: Portion;
}

/** Per cent to be added to an early estimate that holds neither contingency nor priced risks. */
export interface Uplift {
  /** Absent where the table has no value for this kind. */
  duration?: UpliftSide;
  capital?: UpliftSide;
  running?: UpliftSide;
}
/** An uplift of time or money, as a share of the estimate. */
export interface UpliftSide {
  upper: Percent;
  lower: Percent;
  /** upper * (1 - mitigated). */
  result: Percent;
  /** The result is below what the best managed projects of the sample still needed. */
  belowLower: boolean;
}

/**
 * The uplift of a project of one kind or of several: upper bounds weighted by the parts, then reduced by the part of the
 * contributing risks that is shown to be managed: upper * (1 - mitigated). Nothing is rounded (the published example
 * turns 4.08 into 4) and the lower bound is no floor, only told.
 * Source: as `UPLIFT_BOUNDS`; combined projects and mitigation by the same guidance's worked examples, read.
 *
 * @param mitigated  0 to 1; 0 where nothing is shown to be managed.
 */
export function upliftFor(mix: readonly UpliftMix[], mitigated = 0): Uplift {
  const side = (key: "duration" | "capital" | "running"): UpliftSide | undefined => {
    let upper = 0;
    let lower = 0;
    for (const { kind, part } of mix) {
      const bounds: UpliftBounds = UPLIFT_BOUNDS[kind];
      const values = bounds[key];
      if (values === undefined) return undefined;
      upper += part * values[0];
      lower += part * values[1];
    }
    const result = upper * (1 - mitigated);
    return { upper, lower, result, belowLower: result < lower - 1e-9 };
  };
  const [duration, capital, running] = [side("duration"), side("capital"), side("running")];
  return { ...(duration && { duration }), ...(capital && { capital }), ...(running && { running }) };
}

/** The uplift of a kind at a stage of appraisal, 1 to 3; undefined where the table has none. */
export function stageUplift(kind: StageKind, stage: 1 | 2 | 3): number | undefined {
  return STAGE_UPLIFTS[kind].capital[stage - 1];
}
