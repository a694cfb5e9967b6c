import { seedWords } from "../../sampling/streams/seedBlock.ts";

/** The words that seed ten blocks of a stream. */
export function seedTen(stream: string, decade: number, words: Uint32Array): void {
  for (let k = 0; k < 10; k++) words.set(seedWords(stream, 10 * decade + k), 4 * k);
}
