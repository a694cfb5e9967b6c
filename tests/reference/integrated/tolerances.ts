import { expect } from "vitest";

/**
 * Tolerances of four standard errors at n plain iterations: a correct engine misses one about once in 16,000.
 * Latin hypercube sampling, the default, errs less; the limits are kept for plain sampling.
 */
export const errors = 4;

/** The mean of a sample of n with standard deviation sd. */
export function expectMean(actual: number, expected: number, sd: number, n = 10_000): void {
  expectWithin(actual, expected, (errors * sd) / Math.sqrt(n));
}

/** A probability, or a share of iterations. */
export function expectShare(actual: number, expected: number, n = 10_000): void {
  expectWithin(actual, expected, errors * Math.sqrt((expected * (1 - expected)) / n));
}

/** A standard deviation: standard error sd / sqrt(2n), exact for normal values and near enough for these. */
export function expectSd(actual: number, expected: number, n = 10_000): void {
  expectWithin(actual, expected, (errors * expected) / Math.sqrt(2 * n));
}

/** |actual - expected| <= limit, with both in the message; 1e-9 on top for arithmetic. */
export function expectWithin(actual: number, expected: number, limit: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected} within ${limit}`).toBeLessThanOrEqual(
    limit + 1e-9 * Math.max(1, Math.abs(expected)),
  );
}
