import type { Id, IsoDate } from "../plan/types.ts";
import type { Chance, InUnitBeside } from "../units.ts";

/** A quality bar, and where it stands: exactly one of `atLeast` and `atMost`. */
export interface QualityNow {
  id: Id;
  statement: string;
  atLeast?: InUnitBeside;
  atMost?: InUnitBeside;
  /** Unit of these numbers, in words. */
  unit?: string;
  owner?: Id;
  /** What was measured, and on which day. */
  measured?: InUnitBeside;
  on?: IsoDate;
  /** Of what was measured. */
  holds?: boolean;
  /** That what is expected clears the bar; absent where it was measured, or nothing is expected. */
  chance?: Chance;
}
