import { fillFromOutcomes } from "../../sampling/fillFromOutcomes.ts";
import type { OutcomeTable } from "../../sampling/outcomeTable.ts";
import { cutAtZero } from "./cutAtZero.ts";

/** Draws of an estimate with outcomes; answers how many were cut at zero. */
export function lookUpOutcomes(
  table: OutcomeTable,
  u: Float64Array,
  out: Float64Array,
  n: number,
  cut: boolean,
): number {
  fillFromOutcomes(table, u, out, n);
  return cut ? cutAtZero(out, n) : 0;
}
