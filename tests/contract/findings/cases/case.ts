import type { Edits } from "../cleanPlan.ts";

/** What brings one finding about, and what nearly does. */
export interface Case {
  found: Edits;
  near: Edits;
  /** Where, and about what. */
  path: string;
  ids?: string[];
  today?: string;
}
