import type { Law } from "@leeway/core";

/** One point of a density: chance per unit at a value. */
export interface DensityPoint {
  at: number;
  density: number;
}

/** How much of a curve without ends is drawn: all but one in a thousand on each side. */
const OUTSIDE = 0.001;
const CELLS = 120;

/**
 * The density of a law as points to be joined. Each is the exact chance of a narrow cell over its width, so the area
 * drawn is the chance; at the ends the line goes on as it came. Cost: about 120 values of the law's distribution.
 */
export function densityPoints(law: Law): DensityPoint[] {
  const from = Number.isFinite(law.min) ? law.min : law.quantile(OUTSIDE);
  const to = Number.isFinite(law.max) ? law.max : law.quantile(1 - OUTSIDE);
  const width = (to - from) / CELLS;
  const points: DensityPoint[] = [];
  let below = law.cdf(from);
  for (let cell = 0; cell < CELLS; cell++) {
    const upTo = law.cdf(from + (cell + 1) * width);
    points.push({ at: from + (cell + 0.5) * width, density: Math.max(0, upTo - below) / width });
    below = upTo;
  }
  const ahead = (at: number, first = 0, second = 0) => ({
    at,
    density: Math.max(0, 1.5 * first - 0.5 * second),
  });
  return [
    ahead(from, points[0]?.density, points[1]?.density),
    ...points,
    ahead(to, points[CELLS - 1]?.density, points[CELLS - 2]?.density),
  ];
}
