import { sumOfLanes } from "./sumOfLanes.ts";

const lanes = new Float64Array(20);

/** Into five entries of `into`: the sums of x, y, x * x, y * y and x * y, taken in four lanes. */
export function sumProducts(x: Float64Array, y: Float64Array, n: number, into: Float64Array): void {
  lanes.fill(0);
  for (let k = 0; k < n; k++) {
    const a = x[k] as number;
    const b = y[k] as number;
    const lane = k & 3;
    lanes[lane] = (lanes[lane] as number) + a;
    lanes[lane + 4] = (lanes[lane + 4] as number) + b;
    lanes[lane + 8] = (lanes[lane + 8] as number) + a * a;
    lanes[lane + 12] = (lanes[lane + 12] as number) + b * b;
    lanes[lane + 16] = (lanes[lane + 16] as number) + a * b;
  }
  for (let i = 0; i < 5; i++) into[i] = sumOfLanes(lanes, 4 * i);
}
