import type { Arena } from "./arena.ts";
import type { KernelExports } from "./exports.ts";
import { answersAt, mostRanks, ranksAt } from "./layout.ts";
import { selectRanks } from "./twins/selectRanks.ts";

/**
 * `selectRanks` in WebAssembly. Values outside the memory are copied to what the arena has left; where that is too
 * little, or the values are few or crowd into few bins, TypeScript does it.
 */
export function ranksSelector(
  wasm: KernelExports,
  buffer: ArrayBuffer,
  arena: Arena,
): (values: Float64Array, ranks: readonly number[]) => number[] {
  const wanted = new Uint32Array(buffer, ranksAt, mostRanks);
  const answers = new Float64Array(buffer, answersAt, mostRanks);
  return (values, ranks) => {
    const n = values.length;
    if (n < 256 || ranks.length > mostRanks) return selectRanks(values, ranks);
    const ascending = Uint32Array.from(ranks).sort();
    const [least = 0] = ascending;
    if (least < 1 || (ascending[ascending.length - 1] as number) > n) return selectRanks(values, ranks);
    // The values themselves, and what is gathered of them.
    let scratch = arena.scratch(8 * (n + (n >> 2)) + 16);
    let room = Math.floor(arena.room / 8) - 1;
    let at = values.byteOffset;
    if (values.buffer !== buffer) {
      if (room < n) return selectRanks(values, ranks);
      at = scratch;
      new Float64Array(buffer, at, n).set(values);
      scratch += 8 * n;
      room -= n;
    }
    // Past n / 4 the whole is better sorted at once.
    room = Math.max(0, Math.min(room, n >> 2));
    let count = 0;
    for (const rank of ascending) if (count === 0 || rank !== wanted[count - 1]) wanted[count++] = rank;
    const places = ranks.map((rank) => wanted.subarray(0, count).indexOf(rank));
    if (wasm.selectRanks(at, n, count, scratch, room) === 0) return selectRanks(values, ranks);
    return places.map((place) => answers[place] as number);
  };
}
