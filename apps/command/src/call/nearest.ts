import { nearest as nearestName } from "@leeway/core";

/** The known word a mistyped one most likely meant: one it begins, else the nearest; undefined when none is near. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const begun = word.length >= 3 ? known.find((candidate) => candidate.startsWith(word)) : undefined;
  return begun ?? nearestName(word, known);
}
