import { readNumber } from "./readNumber.ts";

/** A chance as a person writes it, in per cent; from 0 to 1. */
export function readChance(text: string): { value: number } | { words: string } {
  const entry = readNumber(text.replace(/\s*%$/, ""), "a percentage from 0 to 100", "30");
  if ("words" in entry) return entry;
  if (entry.value < 0 || entry.value > 100)
    return { words: "A chance lies between 0 and 100 %. Write 30 for three times in ten." };
  return { value: Number((entry.value / 100).toPrecision(12)) };
}
