import { solveIncreasing } from "../math/solveIncreasing.ts";
import type { StandardLaw } from "./standardForm.ts";

/**
 * Where the mode of a standard law on [0, 1] must lie so that it stands at `ratio` between the law's percentiles p and
 * 1 - p. With a(x) and b(x) these percentiles for the mode x, (x - a) / (b - a) grows with x from below 0 to above 1:
 * there is one answer for every ratio in [0, 1].
 */
export function modeAt(lawAt: (x: number) => StandardLaw, p: number, ratio: number): number {
  const between = (x: number): number => {
    const law = lawAt(x);
    const a = law.lower(p);
    return (x - a) / (law.upper(p) - a);
  };
  return solveIncreasing(between, 0, 1, ratio);
}
