import { sumOfLanes } from "./sumOfLanes.ts";

const lanes = new Float64Array(4);

/** total += part; answers the sum of part, taken in four lanes (see `Kernel`). */
export function addCost(total: Float64Array, part: Float64Array, n: number): number {
  lanes.fill(0);
  for (let k = 0; k < n; k++) {
    const value = part[k] as number;
    total[k] = (total[k] as number) + value;
    lanes[k & 3] = (lanes[k & 3] as number) + value;
  }
  return sumOfLanes(lanes);
}
