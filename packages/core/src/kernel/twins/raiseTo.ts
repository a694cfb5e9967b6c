/** out = max(out, from). */
export function raiseTo(out: Float64Array, from: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) if ((from[k] as number) > (out[k] as number)) out[k] = from[k] as number;
}
