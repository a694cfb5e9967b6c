import { roundSignificant } from "./roundSignificant.ts";

/**
 * Rounds an estimate so that its last digit is one the sampling limits support, and to four significant
 * digits at most.
 *
 * The last digit kept has the place of the first digit of half the width of the limits: 655,432 known
 * between 652,000 and 659,000 (half width 3,500) becomes 655,000. Limits that meet leave four digits.
 *
 * Source: JCGM 100:2008 (GUM), 7.2.6: an estimate is rounded to be consistent with its uncertainty. Recalled
 * from memory, not read here.
 *
 * Edges: limits in the wrong order are swapped; limits wider than the value itself leave one digit of it; a
 * value that is not finite comes back as it is.
 */
export function roundToLimits(value: number, low: number, high: number): number {
  if (!Number.isFinite(value) || value === 0) return value;
  const half = Math.abs(high - low) / 2;
  const place = Math.floor(Math.log10(Math.abs(value)));
  const supported = half > 0 && Number.isFinite(half) ? place - Math.floor(Math.log10(half)) + 1 : 4;
  return roundSignificant(value, Math.max(1, Math.min(4, supported)));
}
