import { fillFromTable } from "../../sampling/table/fillFromTable.ts";
import type { QuantileTable } from "../../sampling/table/quantileTable.ts";
import { cutAtZero } from "./cutAtZero.ts";

/** Draws by inversion of a tabulated law; answers how many were cut at zero. */
export function lookUp(
  table: QuantileTable,
  u: Float64Array,
  out: Float64Array,
  n: number,
  cut: boolean,
): number {
  fillFromTable(table, u, out, n);
  return cut ? cutAtZero(out, n) : 0;
}
