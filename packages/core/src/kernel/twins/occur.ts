/** occurs = 1 where lo <= u < hi, else 0. */
export function occur(u: Float64Array, lo: number, hi: number, occurs: Uint8Array, n: number): void {
  for (let k = 0; k < n; k++) occurs[k] = (u[k] as number) >= lo && (u[k] as number) < hi ? 1 : 0;
}
