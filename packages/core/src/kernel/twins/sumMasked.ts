import { tolerance } from "../../calendar/tolerance.ts";
import { sumOfLanes } from "./sumOfLanes.ts";

const own = new Float64Array(4);
const all = new Float64Array(4);

/**
 * Into four entries of `into`: sum of duration - base where it moves, sum of duration, how many move, how many have
 * no length. Sums are taken in four lanes.
 */
export function sumMasked(
  duration: Float64Array,
  moves: Uint8Array,
  base: number,
  n: number,
  into: Float64Array,
): void {
  own.fill(0);
  all.fill(0);
  let moving = 0;
  let points = 0;
  for (let k = 0; k < n; k++) {
    const d = duration[k] as number;
    const lane = k & 3;
    all[lane] = (all[lane] as number) + d;
    if (d <= tolerance) points++;
    if (moves[k] === 0) continue;
    moving++;
    own[lane] = (own[lane] as number) + (d - base);
  }
  into[0] = sumOfLanes(own);
  into[1] = sumOfLanes(all);
  into[2] = moving;
  into[3] = points;
}
