/** One stretch of a text put in the place of another: enough to go from the text before to the text after, and back. */
export interface TextChange {
  /** Where it begins, in UTF-16 code units; the same in both texts. */
  readonly at: number;
  readonly removed: string;
  readonly inserted: string;
}

/** What differs: all between the longest beginning and the longest end that both texts share. */
export function changeBetween(before: string, after: string): TextChange {
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && before.charCodeAt(at) === after.charCodeAt(at)) at++;
  let tail = 0;
  while (
    tail < shorter - at &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  )
    tail++;
  // A copy: a part cut out of a text keeps the whole of that text in memory for as long as it lives.
  return structuredClone({
    at,
    removed: before.slice(at, before.length - tail),
    inserted: after.slice(at, after.length - tail),
  });
}

/** @param text  The text before the change. */
export function withChange(text: string, { at, removed, inserted }: TextChange): string {
  return text.slice(0, at) + inserted + text.slice(at + removed.length);
}

/** @param text  The text after the change. */
export function withoutChange(text: string, { at, removed, inserted }: TextChange): string {
  return text.slice(0, at) + removed + text.slice(at + inserted.length);
}
