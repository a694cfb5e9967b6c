import type { Kernel } from "../kernel/index.ts";
import type { Block } from "./block.ts";
import type { Model } from "./model.ts";
import { bytesOfRanks, rankKeeper } from "./ranks/index.ts";
import type { MomentRanks, Moments } from "./trials.ts";

const ofStarts = [0.1, 0.5, 0.9];
const ofFinishes = (confidence: number) => [...ofStarts, confidence];

/** Keeps of the moments of all tasks what their percentiles are read from. */
export interface MomentKeeper {
  absorb(block: Block): void;
  result(): MomentRanks;
}

/** Bytes that it takes in the kernel's arena. */
export function bytesOfMoments(model: Model, { total, confidence }: Moments): number {
  const { length } = model.tasks;
  return bytesOfRanks(length, total, ofStarts) + bytesOfRanks(length, total, ofFinishes(confidence));
}

export function momentKeeper(kernel: Kernel, model: Model, { total, confidence }: Moments): MomentKeeper {
  const { length } = model.tasks;
  const starts = rankKeeper(kernel, length, total, ofStarts);
  const finishes = rankKeeper(kernel, length, total, ofFinishes(confidence));
  return {
    absorb(block) {
      for (let j = 0; j < length; j++) {
        starts.absorb(j, block.start[j] as Float64Array, block.n);
        finishes.absorb(j, block.finish[j] as Float64Array, block.n);
      }
    },
    result: () => ({ starts: starts.result(), finishes: finishes.result() }),
  };
}
