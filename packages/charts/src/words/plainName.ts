import { cutText } from "./cutText.ts";

/**
 * A name as it may stand in a line of our own: on one line, without control characters, and, when it holds
 * letters that run right to left, kept apart (U+2068 … U+2069) so that it does not turn the figures after it.
 *
 * @param most  Longer names are cut to this many characters, as a reader counts them, at the end of a word, and "…".
 * @param over  So many characters more are no reason to cut.
 *
 * Source: Unicode Standard Annex 9, explicit directional isolates.
 */
export function plainName(name: string, most = 300, over = 0): string {
  const clean = name
    .slice(0, 2000)
    .replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g, "")
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, " ")
    .trim();
  if (clean === "") return "(no name)";
  const kept = cutText(clean, most, over);
  return rightToLeft.test(kept) ? `\u2068${kept}\u2069` : kept;
}

/** A name in a sentence: in quotation marks, so that "Permit decided moves …" is not misread; 60 characters at most. */
export function quoteName(name: string): string {
  return `“${plainName(name, 60)}”`;
}

const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;
