import { sumOfLanes } from "./sumOfLanes.ts";

const lanes = new Float64Array(4);

/** total += scale * draws where it occurs; answers the sum of what was added, taken in four lanes. */
export function addCostWhere(
  total: Float64Array,
  occurs: Uint8Array,
  draws: Float64Array,
  scale: number,
  n: number,
): number {
  lanes.fill(0);
  for (let k = 0; k < n; k++) {
    if (occurs[k] === 0) continue;
    const value = scale * (draws[k] as number);
    total[k] = (total[k] as number) + value;
    lanes[k & 3] = (lanes[k & 3] as number) + value;
  }
  return sumOfLanes(lanes);
}
