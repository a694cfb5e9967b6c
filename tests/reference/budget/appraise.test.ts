// Money over time and expected values, against published figures.
import { describe, expect, it } from "vitest";
import {
  chanceUpTo,
  discountFactor,
  escalated,
  expectedValue,
  midYearFactor,
  netValue,
  nominalRate,
  payback,
  returnRate,
  rollBack,
  yearly,
} from "../../../packages/core/src/index.ts";

// HM Treasury, The Green Book, Annex A6: 3.5 % a year for years 0 to 30 (rate read; factors computed as 1.035^-y; 0.9662,
// 0.9335 and 0.9019 recalled from the published table, and they agree).
describe("discountFactor(0.035, year)", () => {
  it.each([
    [0, 1],
    [1, 0.9661835749],
    [2, 0.9335107004],
    [3, 0.9019427057],
    [4, 0.8714422277],
    [5, 0.8419731669],
    [6, 0.8135006443],
    [7, 0.7859909607],
    [8, 0.7594115562],
    [9, 0.7337309722],
    [10, 0.7089188137],
  ])("year %i", (year, factor) => {
    expect(Math.abs(discountFactor(0.035, year) - factor)).toBeLessThan(1e-9);
  });
});

// HM Treasury, The Green Book (2003), ch. 5, discounting box: -0.82 and +0.51 (recalled; recomputed).
describe("netValue(flows, rate)", () => {
  it.each([
    ["A", [-10, 2.5, 2.5, 2.5, 2.5], -0.8173019785],
    ["B", [-5, 1.5, 1.5, 1.5, 1.5], 0.5096188129],
  ])("option %s of the discounting box", (_, amounts, expected) => {
    expect(Math.abs(netValue(yearly(amounts), 0.035) - expected)).toBeLessThan(1e-6);
  });
});

// Brigham & Ehrhardt, Financial Management: Theory and Practice, capital budgeting, project S: net value 78.82 at 10 %,
// internal rate 14.5 %, payback 2.33 years, discounted 2.95 (recalled; recomputed to the digits below).
describe("project S", () => {
  const flows = yearly([-1000, 500, 400, 300, 100]);
  it("has the published net value, internal rate and paybacks", () => {
    expect(Math.abs(netValue(flows, 0.1) - 78.8197527491)).toBeLessThan(1e-6);
    expect(Math.abs((returnRate(flows) ?? 0) - 0.1448884428)).toBeLessThan(1e-6);
    expect(Math.abs((payback(flows) ?? 0) - 2.3333333333)).toBeLessThan(1e-6);
    expect(Math.abs((payback(flows, 0.1) ?? 0) - 2.9533333333)).toBeLessThan(1e-6);
  });
});

describe("returnRate(flows)", () => {
  it("is the rate at which one payment later makes up for one now: (F/P)^(1/n) - 1, and may be a loss", () => {
    expect(returnRate(yearly([-100, 0, 121]))).toBeCloseTo(0.1, 10);
    expect(returnRate(yearly([-100, 0, 81]))).toBeCloseTo(-0.1, 10);
  });
  it("is undefined where several rates answer, or none", () => {
    // -1, 5, -6 is nought at 100 % and at 200 %: the textbook case of two rates (arithmetic: (x - 2)(x - 3)).
    expect(returnRate(yearly([-1, 5, -6]))).toBeUndefined();
    expect(returnRate(yearly([100, -50]))).toBeUndefined();
    expect(returnRate(yearly([-100, -1]))).toBeUndefined();
    expect(returnRate([])).toBeUndefined();
  });
});

describe("payback(flows)", () => {
  it("is 0 where nothing is to be paid back and undefined where it never is", () => {
    expect(payback(yearly([5, 1]))).toBe(0);
    expect(payback(yearly([-5, 1, 1]))).toBeUndefined();
  });
});

// NASA Cost Estimating Handbook v4.0 (2015), 4.5-4.6: future value (1 + i)^n, end and middle of year, the Fisher relation
// (formulae read in a digest; figures are arithmetic).
describe("escalation and rates", () => {
  it.each([
    [1, 1025],
    [5, 1131.4082128906],
    [10, 1280.0845441964],
  ])("1,000 escalated at 2.5 %% for %i years", (years, expected) => {
    expect(Math.abs(escalated(1000, 0.025, years) / expected - 1)).toBeLessThan(1e-9);
  });
  it("real 3.5 % and inflation of 2 % make 5.57 % nominal", () => {
    expect(Math.abs(nominalRate(0.035, 0.02) / 0.0557 - 1)).toBeLessThan(1e-9);
  });
  it.each([
    [1, 0.9829463744],
    [5, 0.8565809782],
  ])("the middle of year %i at 3.5 %%", (year, factor) => {
    expect(Math.abs(midYearFactor(0.035, year) / factor - 1)).toBeLessThan(1e-9);
  });
});

// HM Treasury, The Green Book (2018), Annex A5, para. A5.14, box 22 (read): a facility estimated at GBP 50 m, 10 % at 45,
// 60 % at 50, 30 % at 55; published expected extra cost GBP 1 m.
describe("expectedValue(ways)", () => {
  it("of the facility is 1 m above the estimate, which holds 7 times in 10", () => {
    const ways = [
      { value: 45, chance: 0.1 },
      { value: 50, chance: 0.6 },
      { value: 55, chance: 0.3 },
    ];
    const { mean, sd } = expectedValue(ways);
    expect(mean - 50).toBeCloseTo(1, 9);
    expect(sd).toBeCloseTo(3, 9);
    expect(chanceUpTo(ways, 50)).toBeCloseTo(0.7, 9);
  });
});

// PMI, PMBOK Guide, 6th ed., fig. 11-15: build a new plant or upgrade (read, worked on a course hand-out: 36 and 46).
describe("rollBack(tree)", () => {
  it("prefers the upgrade, at 46 against 36", () => {
    const demand = (cost: number, strong: number, weak: number) => ({
      worth: -cost,
      chances: [
        { chance: 0.6, to: { worth: strong } },
        { chance: 0.4, to: { worth: weak } },
      ],
    });
    const { best, choices, value } = rollBack({
      choices: [
        { name: "build", to: demand(120, 200, 90) },
        { name: "upgrade", to: demand(50, 120, 60) },
      ],
    });
    expect(best).toBe("upgrade");
    expect(choices?.map((one) => one.value)).toEqual([
      expect.closeTo(36, 9) as number,
      expect.closeTo(46, 9) as number,
    ]);
    expect(value).toBeCloseTo(46, 9);
  });
});
