import { expect } from "vitest";
import type { Law } from "../../../packages/core/src/sampling/index.ts";
import { relativeError } from "./range.ts";

const percentiles = ["P1", "P5", "P10", "P25", "P50", "P70", "P75", "P80", "P90", "P95", "P99"] as const;
export type Expected = Partial<Record<(typeof percentiles)[number] | "mean" | "sd" | "mode", number>>;

/** Compares whatever is given, to a relative tolerance. */
export function expectLaw(law: Law, expected: Expected, tolerance: number): void {
  for (const p of percentiles) {
    const value = expected[p];
    if (value !== undefined) {
      expect(relativeError(law.quantile(Number(p.slice(1)) / 100), value), p).toBeLessThan(tolerance);
    }
  }
  if (expected.mean !== undefined)
    expect(relativeError(law.mean, expected.mean), "mean").toBeLessThan(tolerance);
  if (expected.sd !== undefined) expect(relativeError(law.sd, expected.sd), "sd").toBeLessThan(tolerance);
  if (expected.mode !== undefined) {
    expect(relativeError(law.mode ?? Number.NaN, expected.mode), "mode").toBeLessThan(tolerance);
  }
}
