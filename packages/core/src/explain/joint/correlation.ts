import type { Row } from "./jointChance.ts";

/** Pearson's correlation of two rows; 0 when one of them does not vary. Two passes, sums in order. */
export function correlation(xs: Row, ys: Row): number {
  const n = xs.length;
  let x = 0;
  let y = 0;
  for (let k = 0; k < n; k++) {
    x += xs[k] as number;
    y += ys[k] as number;
  }
  x /= n;
  y /= n;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (let k = 0; k < n; k++) {
    const dx = (xs[k] as number) - x;
    const dy = (ys[k] as number) - y;
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  // Rounding leaves a certain row with squares of about 1e-16 of its values.
  const certain = (squares: number, mean: number) =>
    squares <= n * (1e-12 * Math.max(1, Math.abs(mean))) ** 2;
  if (certain(xx, x) || certain(yy, y)) return 0;
  return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}
