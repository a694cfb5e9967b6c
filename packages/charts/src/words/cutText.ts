/**
 * A text on one line of at most `most` characters as a reader counts them, then "…" for the words left out. Cut at the
 * end of a word; within one only where it is longer than all the room.
 *
 * @param over  So many characters more are no reason to cut.
 */
export function cutText(text: string, most: number, over = 0): string {
  if (text.length <= most + over) return text;
  const letters = Array.from(lettersOf.segment(text), ({ segment }) => segment);
  if (letters.length <= most + over) return text;
  const room = letters.slice(0, most).join("");
  const whole = letters[most] === " " ? room.length : room.lastIndexOf(" ");
  // Without spaces, or with one early, words are what their language takes for words.
  const end = whole < room.length / 2 ? Math.max(whole, wordEnd(text, room.length)) : whole;
  const kept = room.slice(0, end > 0 ? end : room.length).replace(/[\s,;:.–—-]+$/u, "");
  return `${kept === "" ? room : kept}…`;
}

/** The end of the last word that ends by `most`; 0 where there is none. */
function wordEnd(text: string, most: number): number {
  let end = 0;
  for (const { index, segment, isWordLike } of wordsOf.segment(text)) {
    if (index + segment.length > most) break;
    if (isWordLike === true) end = index + segment.length;
  }
  return end;
}

const lettersOf = new Intl.Segmenter("en", { granularity: "grapheme" });
const wordsOf = new Intl.Segmenter("en", { granularity: "word" });
