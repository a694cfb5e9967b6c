import type { Arena } from "./arena.ts";
import type { BenefitStream } from "./benefitStream.ts";

/** Bytes of scratch that so many streams of benefits take. */
export const bytesOfStreams = (count: number): number => 8 * (10 * count + 1);

/**
 * Writes streams of benefits to the scratch of an arena, as packages/core/kernel/assembly/worth.ts reads them, and room for
 * what each gained behind them.
 */
export function benefitWriter(
  buffer: ArrayBuffer,
  arena: Arena,
): (streams: readonly BenefitStream[]) => { at: number; gained: Float64Array } | undefined {
  const memory = new Float64Array(buffer, 0, Math.floor(buffer.byteLength / 8));
  return (streams) => {
    const bytes = bytesOfStreams(streams.length);
    if (bytes > arena.room) return undefined;
    const begin = Math.ceil(arena.scratch(bytes) / 8);
    let next = begin;
    for (const { once, factor, end, begins, worth, last, sums } of streams) {
      memory[next] = once ? 1 : 0;
      memory[next + 1] = factor;
      memory[next + 2] = end;
      memory[next + 3] = sums.length - 1;
      memory[next + 4] = begins.byteOffset;
      memory[next + 5] = worth.byteOffset;
      memory[next + 6] = last.byteOffset;
      memory[next + 7] = sums.byteOffset;
      next += 9;
    }
    return { at: 8 * begin, gained: memory.subarray(next, next + streams.length) };
  };
}
