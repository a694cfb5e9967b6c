import { normalScore } from "../../sampling/dependence/normalScore.ts";

/** Probabilities become standard normal scores, in place. */
export function toScores(row: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) row[k] = normalScore(row[k] as number);
}
