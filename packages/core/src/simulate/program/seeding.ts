import { type Arena, bytesOfRows } from "../../kernel/index.ts";
import { seedWords } from "../../sampling/streams/seedBlock.ts";

/** A longer text does not fit into the kernel's page with the number of a block behind it. */
const longest = 5600;

function charsOf(streams: readonly string[]): number {
  let chars = 0;
  for (const { length } of streams) if (length <= longest) chars += length;
  return chars;
}

/** Bytes that `noteStreams` takes in an arena. */
export function bytesOfStreams(streams: readonly string[]): number {
  return bytesOfRows(1, 2 * charsOf(streams), 1) + bytesOfRows(1, 2 * streams.length, 4);
}

/** Writes texts into an arena, and a list of them for the kernel's `seedStreams`: its address. Long ones are left empty. */
export function noteStreams(arena: Arena, streams: readonly string[]): number {
  const { buffer, byteOffset } = arena.bytes(1, 2 * charsOf(streams))[0] as Uint8Array;
  const chars = new Uint16Array(buffer, byteOffset);
  const list = arena.int32(1, 2 * streams.length)[0] as Int32Array;
  let next = 0;
  for (let i = 0; i < streams.length; i++) {
    const text = streams[i] as string;
    list[2 * i] = byteOffset + 2 * next;
    if (text.length > longest) continue;
    list[2 * i + 1] = text.length;
    for (let k = 0; k < text.length; k++) chars[next++] = text.charCodeAt(k);
  }
  return list.byteOffset;
}

/** Seeds the long ones: the words of each decade of blocks stand behind those of the one before. */
export function seedLong(streams: readonly string[], words: Int32Array, decades: number): void {
  streams.forEach((stream, i) => {
    if (stream.length <= longest) return;
    for (let block = 0; block < 10 * decades; block++) {
      const decade = Math.floor(block / 10);
      const at = 40 * (decade * streams.length + i) + 4 * (block - 10 * decade);
      words.set(seedWords(stream, block), at);
    }
  });
}
