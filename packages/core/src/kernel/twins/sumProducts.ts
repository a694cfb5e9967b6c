import { sumOfLanes } from "./sumOfLanes.ts";

const lanes = new Float64Array(20);

/** Into five entries of `into`: the sums of x, y, x * x, y * y and x * y, taken in four lanes. */
export function sumProducts(x: Float64Array, y: Float64Array, n: number, into: Float64Array): void {
  // Lane by lane: five sums stay in registers.
  for (let lane = 0; lane < 4; lane++) {
    let sumX = 0;
    let sumY = 0;
    let sumXX = 0;
    let sumYY = 0;
    let sumXY = 0;
    for (let k = lane; k < n; k += 4) {
      const a = x[k] as number;
      const b = y[k] as number;
      sumX += a;
      sumY += b;
      sumXX += a * a;
      sumYY += b * b;
      sumXY += a * b;
    }
    lanes[lane] = sumX;
    lanes[lane + 4] = sumY;
    lanes[lane + 8] = sumXX;
    lanes[lane + 12] = sumYY;
    lanes[lane + 16] = sumXY;
  }
  for (let i = 0; i < 5; i++) into[i] = sumOfLanes(lanes, 4 * i);
}
