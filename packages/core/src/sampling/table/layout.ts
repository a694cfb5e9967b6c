/**
 * Where things stand in a quantile table. The table holds a standard law's quantiles at 1,829 probabilities and is
 * read by straight lines between them:
 *
 *   body   u from 1/32 to 31/32 in steps of 1/1,024 (961 entries);
 *   tails  each octave [2^-(k+1), 2^-k) below 1/32, down to 2^-32, in 16 equal cells (432), and one more cell from 0
 *          to 2^-32. The upper tail is the same thing in w = 1 - u.
 *
 * So a cell is never wider than 1/16 of its distance from the nearer end, and error stays small far into the tails.
 * At 0 and 1 themselves the table has the ends of the support; of a law without an end, its quantile at `endProbability`.
 */
export const tailLength = 434;
export const upperStart = tailLength;
export const bodyStart = 2 * tailLength;
/** Body cell c of 1,024 begins at entry `bodyOffset + c`, for c = 32 ... 991. */
export const bodyOffset = bodyStart - 32;
export const bodyLength = 961;
export const tableLength = bodyStart + bodyLength;
/** 2^-34: the probability that stands for 0 (and 1 - it for 1) where a law has no end. */
export const endProbability = 5.820766091346741e-11;

/** The probability of tail entry e: 0, then 2^-32 and 16 steps to each octave, up to 1/32 at entry 433. */
export function tailProbability(e: number): number {
  if (e === 0) return 0;
  const octave = (e - 1) >> 4;
  let u = (16 + ((e - 1) & 15)) * 1.4551915228366852e-11; // 2^-36
  for (let k = 0; k < octave; k++) u *= 2;
  return u;
}
