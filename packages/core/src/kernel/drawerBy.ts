import { type Arena, bytesOfRows } from "./arena.ts";
import type { KernelExports } from "./exports.ts";
import type { SeedInto } from "./seederBy.ts";
import type { Drawer, Drawing } from "./types.ts";

/** Of a record (packages/core/kernel/assembly/drawMany.ts). */
const recordBytes = 48;
/** Of the words of ten blocks. */
const wordsOfTen = 40;

/** Bytes that a drawer of so many estimates takes in an arena. */
export function bytesOfDrawer(count: number): number {
  return bytesOfRows(1, recordBytes * count, 1) + bytesOfRows(1, wordsOfTen * count, 4);
}

/** A drawer on top of the module: what it needs to know stands in the memory, so a block is one call. */
export function drawerBy(
  wasm: KernelExports,
  arena: Arena,
  drawings: readonly Drawing[],
  seedInto: SeedInto,
): Drawer {
  const count = drawings.length;
  const { buffer, byteOffset } = arena.bytes(1, recordBytes * count)[0] as Uint8Array;
  const integers = new Uint32Array(buffer, byteOffset, (recordBytes / 4) * count);
  const doubles = new Float64Array(buffer, byteOffset, (recordBytes / 8) * count);
  const allWords = arena.int32(1, wordsOfTen * count)[0] as Int32Array;
  const words = drawings.map(
    (_, i) => new Uint32Array(buffer, allWords.byteOffset + 4 * wordsOfTen * i, wordsOfTen),
  );
  drawings.forEach(({ table, cut }, i) => {
    integers[12 * i] = (words[i] as Uint32Array).byteOffset;
    integers[12 * i + 1] = table.values.byteOffset;
    integers[12 * i + 3] = cut ? 1 : 0;
    doubles[6 * i + 2] = table.shift;
    doubles[6 * i + 3] = table.scale;
  });
  let decade = -1;
  return {
    draw(block, outs, n, below) {
      const asked = Math.floor(block / 10);
      if (asked !== decade) {
        drawings.forEach(({ stream }, i) => {
          seedInto(stream, asked, words[i] as Uint32Array);
        });
        decade = asked;
      }
      for (let i = 0; i < count; i++) {
        integers[12 * i + 2] = (outs[i] as Float64Array).byteOffset;
        integers[12 * i + 8] = 0;
      }
      wasm.drawMany(byteOffset, count, block - 10 * decade, n);
      for (let i = 0; i < count; i++) below[i] = (below[i] as number) + (integers[12 * i + 8] as number);
    },
  };
}
