import { readNumber } from "./readNumber.ts";

/**
 * Over how many years benefits are counted, from what was typed. The format takes less than one, and 0, over which
 * nothing is worth anything; nobody who enters it here means that.
 */
export function readYears(text: string): { value: number } | { words: string } {
  const entry = readNumber(text, "a number of years", "5");
  return "value" in entry && (entry.value < 1 || entry.value > 100)
    ? { words: "Benefits are counted over at least 1 year and at most 100. Write 5." }
    : entry;
}
