import { normalCdf } from "../../sampling/dependence/normalCdf.ts";

/** Standard normal scores become probabilities, in place; beyond 36.8 they are 0 or 1. */
export function toChances(row: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const z = row[k] as number;
    // The rest is below 1e-295, and no draw comes from there.
    row[k] = Math.abs(z) * Math.SQRT1_2 > 26 ? (z < 0 ? 0 : 1) : normalCdf(z);
  }
}
