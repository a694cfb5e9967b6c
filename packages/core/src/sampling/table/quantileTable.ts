import type { RangeEstimate } from "../../plan/types.ts";
import { standardise } from "../shapes/standardise.ts";
import { standardTable } from "./standardTable.ts";

/** A range estimate ready for drawing: value = shift + scale * (standard table at u). */
export interface QuantileTable {
  /** Shared between estimates of one shape: read only. Layout in layout.ts. */
  readonly values: Float64Array;
  readonly shift: number;
  readonly scale: number;
}

/** Builds, or finds, the quantile table of a range estimate, in its own unit, not cut at zero. */
export function quantileTable(estimate: RangeEstimate): QuantileTable {
  const { shape, parameter, shift, scale } = standardise(estimate);
  return { values: standardTable(shape, parameter), shift, scale };
}
