import { plainName } from "@leeway/charts";

/** C0 and C1 controls, line breaks included: a terminal obeys some of them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROLS = /[\u0000-\u001f\u007f-\u009f]+/g;
/** Marks that turn the direction of what follows (Unicode Standard Annex 9). */
const TURNS = /[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g;

/** Text that quotes a plan, as one line a terminal only shows. */
export function plainText(text: string): string {
  return text.replace(TURNS, "").replace(CONTROLS, " ");
}

/** A copy of plain data with every text in it made fit for a line of our own. */
export function plainTexts<T>(value: T): T {
  // JSON keeps the shape: only texts are replaced, each by a text.
  return JSON.parse(JSON.stringify(value), (_key, part: unknown) =>
    typeof part === "string" ? plainName(part) : part,
  ) as T;
}
