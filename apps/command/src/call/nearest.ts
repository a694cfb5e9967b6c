/** Edits (insert, delete, replace, swap neighbours) between two words: restricted Damerau distance. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replace = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min(replace, (previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      }
      row.push(best);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}

/**
 * The known word a mistyped one most likely meant: one it begins, or the closest within a third of its
 * length (at least two edits). Undefined when nothing is near. Ties go to the earlier word.
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.max(2, Math.ceil(word.length / 3)) + 1;
  for (const candidate of known) {
    const edits = word.length >= 3 && candidate.startsWith(word) ? 0 : distance(word, candidate);
    if (edits < least) [best, least] = [candidate, edits];
  }
  return best;
}
