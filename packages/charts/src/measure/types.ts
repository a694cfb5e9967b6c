import type { Effect } from "@leeway/core";

/** How amounts of time or of money are picked out of a result and written, one way for all rows of a chart. */
export interface Measure {
  amount: (effect: Effect) => number;
  /** What moves: "date", "sum". */
  what: string;
  /** Heading of a column of figures: "working days", "EUR". */
  unit: string;
  /** The plan's currency; "" for days. */
  currency: string;
  /** Which way is which: "earlier" and "later". */
  less: string;
  more: string;
  /** Amounts smaller than this show no digit. */
  least: number;
  /** An amount for a column, with its sign and without its unit; all end on the same place. */
  column: (value: number) => string;
  /** The size of an amount in a sentence, with its unit: "9.1 working days". */
  say: (value: number) => string;
}
