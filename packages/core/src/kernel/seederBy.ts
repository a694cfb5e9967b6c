import { seedWords } from "../sampling/streams/seedBlock.ts";
import type { KernelExports } from "./exports.ts";
import { charsAt, mostChars } from "./layout.ts";

/** Writes the words of ten blocks into a row of the kernel's memory. */
export type SeedInto = (stream: string, decade: number, words: Uint32Array) => void;

/** `seedTen` in WebAssembly; a text too long for the kernel's page is hashed in TypeScript. */
export function seederBy(wasm: KernelExports, buffer: ArrayBuffer): SeedInto {
  const chars = new Uint16Array(buffer, charsAt, mostChars);
  return (stream, decade, words) => {
    const text = decade === 0 ? stream : `${stream}${decade}`;
    const { length } = text;
    if (length > mostChars) {
      for (let k = 0; k < 10; k++) words.set(seedWords(stream, 10 * decade + k), 4 * k);
      return;
    }
    for (let k = 0; k < length; k++) chars[k] = text.charCodeAt(k);
    wasm.seedTen(length, words.byteOffset);
  };
}
