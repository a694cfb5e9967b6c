// The chance that what is expected clears a bar, against closed forms: uniform (x - a) / (b - a); triangular
// (x - a)^2 / ((b - a)(c - a)) below the mode c; beta with alpha = beta = 3, which PERT of a middling mode is, at its
// middle 1/2 and at a quarter 53/512 (its distribution function 10u^3 - 15u^4 + 6u^5). Worked out by hand.
import { estimateChance, qualityBars } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { HEAD, mustRead, TASK } from "../plan/plans.ts";

const barOf = (keys: string) =>
  qualityBars(mustRead(`${HEAD}${TASK}purpose: { quality: [{ id: q, statement: Q, ${keys} }] }\n`))[0];

describe("qualityBars(plan)", () => {
  it.each([
    ["atMost: 4, expected: { low: 0, high: 10, shape: uniform }", 0.4],
    ["atLeast: 4, expected: { low: 0, high: 10, shape: uniform }", 0.6],
    ["atMost: 3, expected: { low: 0, likely: 6, high: 10, shape: triangular }", 0.15],
    ["atMost: 5, expected: [0, 5, 10]", 0.5],
    ["atMost: 2.5, expected: [0, 5, 10]", 53 / 512],
    ["atMost: 8, expected: { low: 2, likely: 5, high: 8, bounds: p10-p90 }", 0.9],
    ["atLeast: 2, expected: { low: 2, likely: 5, high: 8, bounds: p5-p95 }", 0.95],
    ["atMost: -1, expected: [0, 5, 10]", 0],
    ["atMost: 11, expected: [0, 5, 10]", 1],
    ["atMost: 5, expected: 5", 1],
    ["atLeast: 5, expected: 5", 1],
    ["atLeast: 5.1, expected: 5", 0],
    ["atLeast: 3, expected: { outcomes: [{ value: 1, chance: 0.3 }, { value: 3, chance: 0.7 }] }", 0.7],
    ["atMost: 1, expected: { outcomes: [{ value: 1, chance: 0.3 }, { value: 3, chance: 0.7 }] }", 0.3],
  ])("%s holds with a chance of %s", (keys, chance) => {
    expect(barOf(keys)?.chance).toBeCloseTo(chance, 8);
  });

  it.each([
    ["atMost: 5, measured: 5", true],
    ["atMost: 5, measured: 5.01", false],
    ["atLeast: -18, measured: -17", true],
    ["atLeast: 5, measured: 4", false],
  ])("%s: measured, it holds or not, whatever was expected", (keys, holds) => {
    const bar = barOf(`${keys}, expected: [1, 5, 9]`);
    expect(bar?.holds).toBe(holds);
    expect(bar?.chance).toBeUndefined();
  });

  it("of an open end is 0 and 1 far out", () => {
    const normal = {
      kind: "range",
      low: -1,
      high: 1,
      shape: "normal",
      bounds: "p10-p90",
      unit: "days",
    } as const;
    expect(estimateChance(normal, 0)).toBeCloseTo(0.5, 12);
    expect([estimateChance(normal, -50), estimateChance(normal, 50)]).toEqual([0, 1]);
  });
});
