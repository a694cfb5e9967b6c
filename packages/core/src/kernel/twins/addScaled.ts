/** out += factor * row. */
export function addScaled(out: Float64Array, row: Float64Array, factor: number, n: number): void {
  for (let k = 0; k < n; k++) out[k] = (out[k] as number) + factor * (row[k] as number);
}
