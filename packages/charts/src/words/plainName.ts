/**
 * A name as it may stand in a line of our own: on one line, without control characters, and, when it holds
 * letters that run right to left, kept apart (U+2068 … U+2069) so that it does not turn the figures after it.
 *
 * Source: Unicode Standard Annex 9, explicit directional isolates.
 */
export function plainName(name: string): string {
  const clean = name
    .slice(0, 500)
    .replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g, "")
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, " ")
    .trim();
  if (clean === "") return "(no name)";
  return /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/.test(clean) ? `\u2068${clean}\u2069` : clean;
}
