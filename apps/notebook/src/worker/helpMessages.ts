import type { Plan, TrialSums } from "@leeway/core";

/** To a helper: begin with this plan's blocks from the last one down; or, without a plan, leave what you are at. */
export interface HelpWanted {
  turn: number;
  plan?: Plan;
}

/** From a helper: one block. `rows` one after the other, as `rowsIn` lists them, each of the block's length. */
export interface HelpedBlock {
  turn: number;
  block: number;
  sums: TrialSums;
  rows: Float64Array;
}
