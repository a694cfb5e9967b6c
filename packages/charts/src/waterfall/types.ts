import type { FlagText } from "../draw/flags.ts";
import type { Measure } from "../measure/types.ts";

/** One step of a waterfall. */
export interface Fall {
  id: string;
  name: string;
  /** What kind of thing it is, quietly beside the name; "" needs none. */
  word: string;
  /** An event of the register, a range of estimates, or limited people. */
  tint: "range" | "register" | "people";
  /** Stands for several: such steps come last. */
  gathered?: boolean;
  value: number;
  /** Standard error; 0 where the value is exact. */
  error: number;
}

export interface WaterfallView {
  falls: Fall[];
  /** Marks where the first step begins and where the last one ends. */
  from: FlagText;
  to: FlagText;
  /** Name of the sum of all steps, and the sum. */
  total: { name: string; value: number };
  measure: Measure;
  /** Most of the width that names may take; a third unless told. */
  nameShare?: number;
  /** The most lines a name may take; two unless told. */
  nameLines?: number;
}
