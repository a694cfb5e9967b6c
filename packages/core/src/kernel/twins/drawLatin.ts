import { blockSize } from "../../sampling/streams/blockSize.ts";
import type { QuantileTable } from "../../sampling/table/quantileTable.ts";
import { fillLatin } from "./fillLatin.ts";
import { lookUp } from "./lookUp.ts";

const uniforms = new Float64Array(blockSize);

/** `fillLatin` and `lookUp` in one. */
export function drawLatin(
  seed: Uint32Array,
  table: QuantileTable,
  out: Float64Array,
  n: number,
  cut: boolean,
): number {
  fillLatin(seed, uniforms);
  return lookUp(table, uniforms, out, n, cut);
}
