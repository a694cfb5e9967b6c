/** The largest of a row, at least 0. */
export function largestOf(row: Float64Array, n: number): number {
  let most = 0;
  for (let k = 0; k < n; k++) if ((row[k] as number) > most) most = row[k] as number;
  return most;
}
