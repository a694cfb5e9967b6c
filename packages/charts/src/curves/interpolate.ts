import type { Curve } from "@leeway/core";

/** The value at probability `p`, linear between the points of a quantile curve, flat beyond its ends. */
export function valueAt(curve: Curve, p: number): number {
  return between(curve.p, curve.at, p);
}

/** The share of futures at or below `value`: the curve read the other way. 1 above its last point, 0 below its first. */
export function shareAt(curve: Curve, value: number): number {
  const last = curve.at.length - 1;
  if (last < 0 || value < (curve.at[0] ?? 0)) return 0;
  if (value >= (curve.at[last] ?? 0)) return 1;
  // The last point at or below the value: where the curve stands still, all of the step has happened.
  let k = last;
  while (k > 0 && (curve.at[k] ?? 0) > value) k--;
  const [a, b] = [curve.at[k] ?? 0, curve.at[k + 1] ?? 0];
  const [pa, pb] = [curve.p[k] ?? 0, curve.p[k + 1] ?? 1];
  return b > a ? pa + ((pb - pa) * (value - a)) / (b - a) : pa;
}

/** Linear between points (x ascending), flat beyond the ends; NaN when there are none. */
function between(x: readonly number[], y: readonly number[], at: number): number {
  const last = x.length - 1;
  if (last < 0) return Number.NaN;
  if (at <= (x[0] ?? 0)) return y[0] ?? Number.NaN;
  for (let k = 1; k <= last; k++) {
    const [x0, x1] = [x[k - 1] ?? 0, x[k] ?? 0];
    if (at <= x1) {
      const [y0, y1] = [y[k - 1] ?? 0, y[k] ?? 0];
      return x1 > x0 ? y0 + ((y1 - y0) * (at - x0)) / (x1 - x0) : y1;
    }
  }
  return y[last] ?? Number.NaN;
}
