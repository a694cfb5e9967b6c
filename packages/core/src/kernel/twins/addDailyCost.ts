import { sumOfLanes } from "./sumOfLanes.ts";

const lanes = new Float64Array(4);

/** total += once + rate * duration; answers the sum of what was added, taken in four lanes. */
export function addDailyCost(
  total: Float64Array,
  once: Float64Array,
  rate: number,
  duration: Float64Array,
  n: number,
): number {
  lanes.fill(0);
  for (let k = 0; k < n; k++) {
    const value = (once[k] as number) + rate * (duration[k] as number);
    total[k] = (total[k] as number) + value;
    lanes[k & 3] = (lanes[k & 3] as number) + value;
  }
  return sumOfLanes(lanes);
}
