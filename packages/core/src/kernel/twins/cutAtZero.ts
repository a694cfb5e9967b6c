/** Sets what lies below 0 to 0; answers how many did. */
export function cutAtZero(row: Float64Array, n: number): number {
  let below = 0;
  for (let k = 0; k < n; k++) {
    if ((row[k] as number) < 0) {
      row[k] = 0;
      below++;
    }
  }
  return below;
}
