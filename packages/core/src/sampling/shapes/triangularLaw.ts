import type { StandardLaw } from "./standardForm.ts";

/**
 * The triangular law on [0, 1] with its mode at x, which may be either end. Exact to rounding.
 * Source: Kotz & van Dorp (2004), Beyond Beta, World Scientific, chapter 1.
 */
export function triangularLaw(x: number): StandardLaw {
  const y = 1 - x;
  return {
    min: 0,
    max: 1,
    mean: (1 + x) / 3,
    sd: Math.sqrt((1 - x * y) / 18),
    mode: x,
    lower: (u) => (u <= x ? Math.sqrt(u * x) : 1 - Math.sqrt((1 - u) * y)),
    upper: (w) => (w <= y ? 1 - Math.sqrt(w * y) : Math.sqrt((1 - w) * x)),
    cdf: (z) => (z <= 0 ? 0 : z >= 1 ? 1 : z <= x ? (z * z) / x : 1 - ((1 - z) * (1 - z)) / y),
  };
}
