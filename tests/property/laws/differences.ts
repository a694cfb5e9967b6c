/**
 * Where two JSON-like values differ: `path: left | right` of at most `most` leaves, numbers compared to the bit.
 * `tolerance`: relative (and below 1 absolute) difference of numbers that is none.
 */
export function differences(left: unknown, right: unknown, tolerance = 0, most = 6): string[] {
  const found: string[] = [];
  walk("", left, right);
  return found;

  function walk(path: string, a: unknown, b: unknown): void {
    if (found.length >= most || Object.is(a, b)) return;
    if (typeof a === "object" && typeof b === "object" && a !== null && b !== null) {
      const entriesOfA = new Map(Object.entries(a));
      const entriesOfB = new Map(Object.entries(b));
      for (const key of new Set([...entriesOfA.keys(), ...entriesOfB.keys()])) {
        walk(`${path}/${key}`, entriesOfA.get(key), entriesOfB.get(key));
      }
      return;
    }
    if (typeof a === "number" && typeof b === "number") {
      if (Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a), Math.abs(b))) return;
    }
    found.push(`${path}: ${JSON.stringify(a)} | ${JSON.stringify(b)}`);
  }
}
