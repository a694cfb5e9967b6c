import { seedWords } from "../../sampling/streams/seedBlock.ts";
import type { Drawer, Drawing } from "../types.ts";
import { drawLatin } from "./drawLatin.ts";

/** Draws one estimate after the other. */
export function drawer(drawings: readonly Drawing[]): Drawer {
  return {
    draw(block, outs, n, below) {
      drawings.forEach(({ stream, table, cut }, i) => {
        const cuts = drawLatin(seedWords(stream, block), table, outs[i] as Float64Array, n, cut);
        below[i] = (below[i] as number) + cuts;
      });
    },
  };
}
