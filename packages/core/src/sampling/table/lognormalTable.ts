import { exponential } from "../math/exponential.ts";
import { tableLength } from "./layout.ts";

/**
 * The quantile table of the lognormal law with median 1, from that of the standard normal law.
 *
 * Cost  about 18 microseconds.
 */
export function lognormalTable(sigma: number, normal: Float64Array): Float64Array {
  const table = new Float64Array(tableLength);
  for (let e = 0; e < tableLength; e++) table[e] = exponential(sigma * (normal[e] as number));
  return table;
}
