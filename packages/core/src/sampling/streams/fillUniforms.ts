import type { Design } from "../design.ts";
import { blockSize } from "./blockSize.ts";
import { fillSfc32 } from "./fillSfc32.ts";
import { seedBlock } from "./seedBlock.ts";

// Reused by every call: filling a block never awaits, so nobody sees them half written.
const plainWords = new Uint32Array(blockSize);
const latinWords = new Uint32Array(2 * blockSize);
const stratumOf = new Uint16Array(blockSize);

/**
 * Writes one block of 1,024 uniforms, all strictly between 0 and 1.
 *
 * `plain`: independent draws, (word + 1/2) / 2^32.
 * `latin-hypercube`: exactly one draw in each of the 1,024 strata [k, k + 1) / 1024, in random order, placed at
 * random within its stratum. The order is a Fisher-Yates shuffle whose bounded integers come by
 * multiply-shift: no value of one step is likelier than another by more than 2^-22 of its probability.
 *
 * The block is a function of (design, seed, item, purpose, block): a run that needs part of a block uses the
 * beginning of it, and a longer run extends a shorter one. Every value is a multiple of 2^-43, so 1 - u is exact.
 *
 * @param out     At least `offset` + 1,024 long. Returned.
 *
 * Cost   about 5 ns (plain) or 10 ns (Latin hypercube) a draw, seeding included; allocates four words.
 * Source McKay, Beckman & Conover (1979), Technometrics 21(2), 239-245; Durstenfeld (1964), CACM 7(7), 420.
 */
export function fillUniforms(
  design: Design,
  seed: string,
  item: string,
  purpose: string,
  block: number,
  out: Float64Array,
  offset = 0,
): Float64Array {
  const state = seedBlock(seed, item, purpose, block);
  if (design === "plain") {
    fillSfc32(state, plainWords);
    for (let i = 0; i < blockSize; i++) {
      out[offset + i] = ((plainWords[i] as number) + 0.5) * 2.3283064365386963e-10; // 2^-32
    }
    return out;
  }
  fillSfc32(state, latinWords);
  // Shuffle from the inside out: after step i the first i + 1 strata stand in random order.
  for (let i = 0; i < blockSize; i++) {
    const j = ((latinWords[i] as number) * (i + 1) * 2.3283064365386963e-10) | 0;
    stratumOf[i] = stratumOf[j] as number;
    stratumOf[j] = i;
  }
  for (let i = 0; i < blockSize; i++) {
    const within = ((latinWords[blockSize + i] as number) + 0.5) * 2.3283064365386963e-10;
    out[offset + i] = ((stratumOf[i] as number) + within) * 0.0009765625; // 2^-10
  }
  return out;
}
