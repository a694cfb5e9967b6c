import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { type Block, blockSize, kernelFor, newBlock } from "../../simulate/block.ts";
import { draws } from "../../simulate/draws.ts";
import type { Model } from "../../simulate/model.ts";
import { newCapacity } from "../../simulate/people.ts";
import { place } from "../../simulate/place.ts";
import { realise } from "../../simulate/realise.ts";
import { BeyondCalendarError } from "../stage.ts";
import type { Draw } from "../variants.ts";

/**
 * Draws and places every block of a run in turn, in rows that are used again, and hands it over: `first` is its first
 * iteration. The moments are those of `simulate` with the same draw, to the bit.
 *
 * @param planned  As-written starts.
 * @param only     This block alone.
 * @param more     Bytes that a visitor takes in the block's kernel besides a block.
 *
 * Throws BeyondCalendarError.
 */
export function eachBlock(
  model: Model,
  draw: Draw,
  planned: Float64Array,
  visit: (block: Block, first: number) => void,
  only?: number,
  more = 0,
): void {
  const n = draw.iterations;
  const source = draws(model, draw.seed, draw.design);
  const size = Math.min(n, blockSize);
  // Room for one more block: a visitor may work on a copy.
  const block = newBlock(model, size, kernelFor(model, size, 2, more));
  const blocks = Math.ceil(n / blockSize);
  for (let b = only ?? 0; b < (only === undefined ? blocks : only + 1); b++) {
    const first = b * blockSize;
    block.n = Math.min(blockSize, n - first);
    source.fill(b, block);
    realise(model, block);
    const beyond = place(model, block, planned, model.limitedPeople ? newCapacity(model) : undefined);
    if (beyond >= 0) throw new BeyondCalendarError(beyondCalendar(model, beyond));
    visit(block, first);
  }
}
