/** Words that say nothing about a cause. */
const EMPTY = new Set(
  "with from that this have will they their them than then after before over under more less late delay delays risk pace".split(
    " ",
  ),
);

function wordsOf(text: string): Set<string> {
  const words = text.toLowerCase().match(/\p{L}{4,}/gu) ?? [];
  return new Set(words.map((word) => word.replace(/s$/, "")).filter((word) => !EMPTY.has(word)));
}

/** Whether two texts are about the same thing as far as words tell: two telling words in common, or all of the shorter. */
export function sharedWords(a: string, b: string): boolean {
  const [x, y] = [wordsOf(a), wordsOf(b)];
  const shared = [...x].filter((word) => y.has(word)).length;
  return (
    shared >= 2 ||
    (shared > 0 &&
      shared === Math.min(x.size, y.size) &&
      Math.min(x.size, y.size) > 0 &&
      x.size + y.size <= 3)
  );
}
