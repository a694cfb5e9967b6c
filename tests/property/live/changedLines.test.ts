// The lines in which two texts differ. The least number of them is by the longest common subsequence, found here by
// dynamic programming (Wagner and Fischer, 1974, Journal of the ACM 21, 168-173; recalled).
import { changedLines } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const lines = fc.array(fc.constantFrom("a", "b", "c", ""), { maxLength: 12 });

function leastChanges(a: readonly string[], b: readonly string[]): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const [i, left] of a.entries()) {
    const next = [i + 1];
    for (const [j, right] of b.entries()) {
      const least = Math.min(row[j + 1] as number, next[j] as number) + 1;
      next.push(left === right ? Math.min(least, row[j] as number) : least);
    }
    row = next;
  }
  return row[b.length] as number;
}

describe("changedLines(before, after)", () => {
  it("leads from one text to the other, with as few lines as can be", () => {
    fc.assert(
      fc.property(lines, lines, (a, b) => {
        const changes = changedLines(a.join("\n"), b.join("\n"));
        const made = a.length === 0 ? [""] : [...a];
        // From the end, so that the numbers before it stay true.
        for (const { line, removed, added } of [...changes].reverse()) {
          expect(made.slice(line - 1, line - 1 + removed.length)).toEqual(removed);
          made.splice(line - 1, removed.length, ...added);
        }
        expect(made.join("\n")).toBe(b.join("\n"));
        const count = changes.reduce((sum, { removed, added }) => sum + removed.length + added.length, 0);
        expect(count).toBe(leastChanges(a.join("\n").split("\n"), b.join("\n").split("\n")));
      }),
      { seed: 20270104, numRuns: 500 },
    );
  });
});
