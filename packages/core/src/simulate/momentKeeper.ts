import type { Kernel } from "../kernel/index.ts";
import type { Block } from "./block.ts";
import type { Model } from "./model.ts";
import { bytesOfRanks, rankKeeper, settledRanks } from "./ranks/index.ts";
import type { MomentRanks, Moments } from "./trials.ts";

const ofStarts = [0.1, 0.5, 0.9];
const ofFinishes = (confidence: number) => [...ofStarts, confidence];

/** Keeps of the moments of all tasks what their percentiles are read from. */
export interface MomentKeeper {
  absorb(block: Block): void;
  /** Of tasks `from` up to `to`; default: of all. */
  result(from?: number, to?: number): MomentRanks;
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
    result: (from, to) => ({ starts: starts.result(from, to), finishes: finishes.result(from, to) }),
  };
}

/** What several keepers kept, settled task by task, so that not all of it has to be held at once. */
export interface SettledMoments {
  ranks: MomentRanks;
  /** Settles tasks from `first` on: one part of each keeper, all of the same tasks. */
  settle(first: number, parts: readonly MomentRanks[]): void;
}

/** Moments of so many tasks, to be settled, with P10, P50, P90 and, of finishes, this level (0 to 1). */
export function settledMoments(tasks: number, confidence: number): SettledMoments {
  const starts = settledRanks(tasks, ofStarts);
  const finishes = settledRanks(tasks, ofFinishes(confidence));
  return {
    ranks: { starts: starts.kept, finishes: finishes.kept },
    settle(first, parts) {
      starts.settle(
        first,
        parts.map((part) => part.starts),
      );
      finishes.settle(
        first,
        parts.map((part) => part.finishes),
      );
    },
  };
}
