// Newcombe (1998), "Two-sided confidence intervals for the single proportion: comparison of seven methods", Statistics in
// Medicine 17, 857-872, Table I, method 3 (Wilson's score), 95 %: recalled from memory, recomputed with the formula.
import { wilson } from "@leeway/core";
import { describe, expect, it } from "vitest";

describe("wilson(k, n)", () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])("gives Newcombe's limits for %i of %i", (k, n, low, high) => {
    const found = wilson(k, n);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });

  it("is the mirror image for the others, and says nothing of none", () => {
    const [some, rest] = [wilson(3, 10), wilson(7, 10)];
    expect(some.low).toBeCloseTo(1 - rest.high, 12);
    expect(some.high).toBeCloseTo(1 - rest.low, 12);
    expect(wilson(20, 20).high).toBe(1);
    expect(wilson(0, 0)).toMatchObject({ low: 0, high: 1 });
  });
});
