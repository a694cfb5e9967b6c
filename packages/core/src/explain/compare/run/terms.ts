import type { Plan } from "../../../plan/types.ts";
import type { Draw } from "../../variants.ts";

/** In what terms two plans are compared: the new plan's, for both. */
export interface Terms {
  /** Its calendar counts working days, from its start. */
  newer: Plan;
  /** The earlier start of the two. */
  earliest: string;
  draw: Draw;
  confidence: number;
}
