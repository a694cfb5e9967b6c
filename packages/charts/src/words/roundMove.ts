import { roundSignificant } from "./roundSignificant.ts";

/** A difference of money on the same draws, wherever it is told: two significant digits; none below half a unit. */
export function roundMove(money: number): number {
  return Math.abs(money) < 0.5 ? 0 : roundSignificant(money, 2);
}
