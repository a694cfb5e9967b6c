import { exponential } from "./exponential.ts";
import { logarithm } from "./logarithm.ts";

/** base^exponent for base >= 0, from our own exp and log: the same bits in every engine. */
export function power(base: number, exponent: number): number {
  if (exponent === 0) return 1;
  return base === 0 ? 0 : exponential(exponent * logarithm(base));
}
