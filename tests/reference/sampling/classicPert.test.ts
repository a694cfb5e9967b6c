import { describe, expect, it } from "vitest";
import { classicPert, lawOf } from "../../../packages/core/src/sampling/index.ts";
import { range } from "./range.ts";

// Anderson, Sweeney, Williams, Camm, Cochran, Fry & Ohlmann, An Introduction to Management Science, table 9.4 (read:
// the estimates, and mean 6 and variance 1.78 of activity A; the other rows recomputed from the formulae).
describe("classicPert(low, likely, high)", () => {
  it.each([
    ["A", 4, 5, 12, 6, 1.7777777778],
    ["B", 1, 1.5, 5, 2, 0.4444444444],
    ["C", 2, 3, 4, 3, 0.1111111111],
    ["D", 3, 4, 11, 5, 1.7777777778],
    ["E", 2, 3, 4, 3, 0.1111111111],
    ["F", 1.5, 2, 2.5, 2, 0.0277777778],
    ["G", 1.5, 3, 4.5, 3, 0.25],
    ["H", 2.5, 3.5, 7.5, 4, 0.6944444444],
    ["I", 1.5, 2, 2.5, 2, 0.0277777778],
    ["J", 1, 2, 3, 2, 0.1111111111],
  ])("activity %s: [%d, %d, %d] has mean %d and variance %d", (_, low, likely, high, mean, variance) => {
    const hand = classicPert(low, likely, high);
    expect(hand.mean).toBeCloseTo(mean, 9);
    expect(hand.sd ** 2).toBeCloseTo(variance, 9);
  });

  // Standard deviations of the beta law from scipy.stats.beta (SciPy 1.17): 0.377964473 and 1.4085904245.
  it("differs from the law that is drawn, by as much as its comment says", () => {
    expect(classicPert(2, 3, 4).sd / lawOf(range(2, 3, 4)).sd).toBeCloseTo(0.3333333333 / 0.377964473, 8);
    expect(classicPert(10, 10, 20).sd / lawOf(range(10, 10, 20)).sd).toBeCloseTo(
      1.6666666667 / 1.4085904245,
      8,
    );
  });
});
