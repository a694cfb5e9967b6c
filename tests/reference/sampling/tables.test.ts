import { SHAPES, type Shape } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { fillFromTable, lawOf, quantileTable } from "../../../packages/core/src/sampling/index.ts";
import type { StandardLaw } from "../../../packages/core/src/sampling/shapes/standardForm.ts";
import { standardLaw } from "../../../packages/core/src/sampling/shapes/standardLaw.ts";
import { tableLength } from "../../../packages/core/src/sampling/table/layout.ts";
import { pertTable } from "../../../packages/core/src/sampling/table/pertTable.ts";
import { standardQuantile } from "../../../packages/core/src/sampling/table/standardQuantile.ts";
import { standardTable } from "../../../packages/core/src/sampling/table/standardTable.ts";
import { tabulate } from "../../../packages/core/src/sampling/table/tabulate.ts";
import { range } from "./range.ts";

// The tables against the exact quantiles, which are checked against 50-digit values in functions.test.ts. Bounds as
// shares of P90 - P10, as the documentation states them; no published source: they are this design's own promise.
const pert = [0, 0.01, 0.06, 0.125, 0.2, 0.25, 0.3333, 0.4, 0.5, 0.55, 0.7, 0.85, 0.99, 1];
const laws: [Shape, number][] = [
  ...pert.map((x): [Shape, number] => ["pert", x]),
  ...[0, 0.2, 0.5, 0.9999, 1].map((x): [Shape, number] => ["triangular", x]),
  ["uniform", 0],
  ["normal", 0],
  ["lognormal", 0.1],
  ["lognormal", 0.5],
];

it("has a law of every shape", () => {
  expect(SHAPES.filter((shape) => !laws.some(([of]) => of === shape))).toEqual([]);
});

const exact = (law: StandardLaw, u: number): number => (u <= 0.5 ? law.lower(u) : law.upper(1 - u));

describe.each(laws)("the table of %s %d", (shape, parameter) => {
  const table = standardTable(shape, parameter);
  const law = standardLaw(shape, parameter);
  const width = law.upper(0.1) - law.lower(0.1);

  it("is within 5e-6 between P10 and P90, and 6e-5 between P4 and P96", () => {
    let middle = 0;
    let body = 0;
    for (let i = 1; i < 50_021; i++) {
      const u = i / 50_021;
      if (u < 0.04 || u > 0.96) continue;
      const error = Math.abs(standardQuantile(table, u) - exact(law, u)) / width;
      body = Math.max(body, error);
      if (u >= 0.1 && u <= 0.9) middle = Math.max(middle, error);
    }
    expect(middle).toBeLessThan(5e-6);
    expect(body).toBeLessThan(6e-5);
  });

  it("is within 1e-4 (lognormal 1e-3) out to 2^-32, and no further off below", () => {
    let worst = 0;
    for (let k = 0; k < 6000; k++) {
      const u = (1 / 32) * 0.9968 ** k;
      const w = 1 - (1 - u); // the upper tail can only be asked for in steps of 2^-53
      const lower = Math.abs(standardQuantile(table, u) - law.lower(u));
      const upper = Math.abs(standardQuantile(table, 1 - u) - law.upper(w));
      if (u > 2 ** -32) worst = Math.max(worst, lower / width, upper / width);
    }
    expect(worst).toBeLessThan(shape === "lognormal" ? 1e-3 : 1e-4);
  });

  it("has the mean of the law to 1e-5 of its standard deviation", () => {
    const n = 1 << 18;
    let sum = 0;
    for (let i = 0; i < n; i++) sum += standardQuantile(table, (i + 0.5) / n);
    // Midpoint sum: its own error is below 2e-6 of the standard deviation for every law here.
    expect(Math.abs(sum / n - law.mean) / law.sd).toBeLessThan(1e-5);
  });

  it("rises through every edge of a cell, and stays within the support", () => {
    let previous = Number.NEGATIVE_INFINITY;
    const steps = [0, 2 ** -44, 2 ** -40, 2 ** -33];
    for (let e = 16; e < 32 * 2 ** 27; e = Math.ceil(e * 1.03)) steps.push(e * 2 ** -37);
    for (const u of [...steps, ...steps.map((s) => 1 - s).reverse()].sort((a, b) => a - b)) {
      const value = standardQuantile(table, u);
      expect(value).toBeGreaterThanOrEqual(previous);
      expect(value >= law.min && value <= law.max && Number.isFinite(value)).toBe(true);
      previous = value;
    }
  });
});

describe("pertTable(x)", () => {
  it("equals the table of exact quantiles to 1e-10, relative to the nearer end in both tails", () => {
    for (const x of [
      0, 0.004, 0.031, 0.09, 0.1249, 0.126, 0.21, 0.3, 0.41, 0.499, 0.5001, 0.66, 0.8, 0.93, 0.9991, 1,
    ]) {
      const quick = pertTable(x);
      const slow = tabulate(standardLaw("pert", x));
      expect(quick.length).toBe(tableLength);
      for (let e = 0; e < tableLength; e++) {
        const a = quick[e] ?? Number.NaN;
        const b = slow[e] ?? Number.NaN;
        expect(Math.abs(a - b)).toBeLessThanOrEqual(e < 434 ? 2e-10 * Math.abs(b) : 1e-10);
      }
    }
  });

  it("rises strictly in every table of a fine grid of modes", () => {
    for (let k = 0; k <= 200; k++) {
      const table = pertTable(k / 200);
      const rises = (from: number, to: number, sign: number): boolean => {
        for (let e = from + 1; e <= to; e++) {
          if (!(sign * ((table[e] ?? 0) - (table[e - 1] ?? 0)) > 0)) return false;
        }
        return true;
      };
      expect([rises(0, 433, 1), rises(434, 867, -1), rises(868, tableLength - 1, 1)]).toEqual([
        true,
        true,
        true,
      ]);
    }
  });
});

describe("fillFromTable(table, u, out, n)", () => {
  it("writes n draws in the unit of the estimate, at the offsets given, and nothing else", () => {
    const estimate = range(5, 7, 14);
    const table = quantileTable(estimate);
    const u = Float64Array.of(9, 0.1, 0.5, 0.9, 9);
    const out = new Float64Array(6).fill(-1);
    fillFromTable(table, u, out, 3, 1, 2);
    const law = lawOf(estimate);
    expect([out[0], out[1], out[5]]).toEqual([-1, -1, -1]);
    [0.1, 0.5, 0.9].forEach((p, k) => {
      expect(Math.abs((out[2 + k] ?? Number.NaN) - law.quantile(p))).toBeLessThan(3e-5);
    });
  });

  it("may write over the uniforms", () => {
    const table = quantileTable(range(0, undefined, 10, "uniform"));
    const u = Float64Array.of(0.25, 0.5, 0.001);
    fillFromTable(table, u, u, 3);
    expect([...u]).toEqual([2.5, 5, 0.01]);
  });
});
