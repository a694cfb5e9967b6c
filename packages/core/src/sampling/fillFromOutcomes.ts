import type { OutcomeTable } from "./outcomeTable.ts";

/**
 * Writes one outcome for each uniform: the smallest value whose cumulative chance reaches it.
 *
 * @param u    Uniforms, n from `uFrom`; may be `out` itself.
 * @param out  n values from `outFrom`.
 *
 * Cost  3 to 9 ns a draw for a handful of outcomes; comparisons only.
 */
export function fillFromOutcomes(
  table: OutcomeTable,
  u: Float64Array,
  out: Float64Array,
  n: number,
  uFrom = 0,
  outFrom = 0,
): void {
  const { values, upTo } = table;
  for (let i = 0; i < n; i++) {
    const p = u[uFrom + i] as number;
    let k = 0;
    while (p > (upTo[k] as number)) k++;
    out[outFrom + i] = values[k] as number;
  }
}
