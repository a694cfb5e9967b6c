/**
 * The x in [low, high] where an increasing function reaches `target`, bracketed at every step; at an end when the
 * target lies beyond it.
 *
 * Error  2e-16 in x. Cost  about 8 calls of f for a smooth function.
 * Source Chandrupatla (1997), Advances in Engineering Software 28(3), 145-149: inverse quadratic interpolation where
 *        it can be trusted, bisection elsewhere.
 */
export function solveIncreasing(f: (x: number) => number, low: number, high: number, target: number): number {
  let x1 = high;
  let x2 = low;
  let f1 = f(high) - target;
  let f2 = f(low) - target;
  if (f2 >= 0) return low;
  if (f1 <= 0) return high;
  let t = 0.5;
  for (let i = 0; i < 100; i++) {
    const x = x1 + t * (x2 - x1);
    const fx = f(x) - target;
    let x3 = x1;
    let f3 = f1;
    if (fx > 0 !== f1 > 0) {
      x3 = x2;
      f3 = f2;
      x2 = x1;
      f2 = f1;
    }
    x1 = x;
    f1 = fx;
    const best = Math.abs(f2) < Math.abs(f1) ? x2 : x1;
    const limit = 1e-16 / Math.abs(x2 - x1);
    if (limit > 0.5 || f1 === 0) return f1 === 0 ? x1 : best;
    const xi = (x1 - x2) / (x3 - x2);
    const phi = (f1 - f2) / (f3 - f2);
    t =
      1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi)
        ? (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
        : 0.5;
    if (t < limit) t = limit;
    if (t > 1 - limit) t = 1 - limit;
  }
  return x1;
}
