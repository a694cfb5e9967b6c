import { piOverSine } from "./piOverSine.ts";

/**
 * sin^2(pi d) = (1 - cos(2 pi d)) / 2 for 0 <= d <= 1/2: the Chebyshev points of [0, 1] are its values at
 * d = (2j + 1) / 4n (first kind, n of them) or d = k / 2n (second kind, ends included). + - * / only.
 */
export function chebyshevPoint(d: number): number {
  const sine = (Math.PI * d) / piOverSine(d);
  return sine * sine;
}
