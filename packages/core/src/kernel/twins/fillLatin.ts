import { blockSize } from "../../sampling/streams/blockSize.ts";
import { fillSfc32 } from "../../sampling/streams/fillSfc32.ts";

// Reused by every call: filling a block never awaits, so nobody sees them half written.
const words = new Uint32Array(2 * blockSize);
const stratumOf = new Uint16Array(blockSize);

/** One uniform in each of the 1,024 strata, in random order: see `fillUniforms`. */
export function fillLatin(seed: Uint32Array, out: Float64Array): void {
  fillSfc32(seed, words);
  // Shuffle from the inside out: after step i the first i + 1 strata stand in random order.
  for (let i = 0; i < blockSize; i++) {
    const j = ((words[i] as number) * (i + 1) * 2.3283064365386963e-10) | 0;
    stratumOf[i] = stratumOf[j] as number;
    stratumOf[j] = i;
  }
  for (let i = 0; i < blockSize; i++) {
    const within = ((words[blockSize + i] as number) + 0.5) * 2.3283064365386963e-10;
    out[i] = ((stratumOf[i] as number) + within) * 0.0009765625; // 2^-10
  }
}
