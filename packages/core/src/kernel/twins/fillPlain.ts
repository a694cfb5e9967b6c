import { blockSize } from "../../sampling/streams/blockSize.ts";
import { fillSfc32 } from "../../sampling/streams/fillSfc32.ts";

const words = new Uint32Array(blockSize);

/** 1,024 independent uniforms: see `fillUniforms`. */
export function fillPlain(seed: Uint32Array, out: Float64Array): void {
  fillSfc32(seed, words);
  for (let i = 0; i < blockSize; i++) {
    out[i] = ((words[i] as number) + 0.5) * 2.3283064365386963e-10; // 2^-32
  }
}
