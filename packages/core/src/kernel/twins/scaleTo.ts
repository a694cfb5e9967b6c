/** out = from * scale. */
export function scaleTo(out: Float64Array, from: Float64Array, scale: number, n: number): void {
  for (let k = 0; k < n; k++) out[k] = (from[k] as number) * scale;
}
