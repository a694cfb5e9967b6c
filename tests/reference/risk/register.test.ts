/** Registers small enough to enumerate: money, chances, and what a risk contributes. */
import { describe, expect, it } from "vitest";
import {
  mergingRisks,
  oneRisk,
  registerOfFour,
  twoDrivers,
} from "../../../packages/core/src/models/index.ts";
import { costAt, finishAt, forecastOf, trialsOf } from "../integrated/runPlan.ts";
import { expectMean, expectSd, expectShare, expectWithin } from "../integrated/tolerances.ts";

// Own data, 16 states enumerated by another program; remove one risk and run again: GAO-16-89G, best practice
// 8, read. The levels tested lie further from a step of the distribution than four standard errors (P90 and
// P95 do not: left out).
describe("forecast(four fixed-size risks)", () => {
  const { document, known } = registerOfFour();
  const result = forecastOf(document, { tornado: true });

  it("has every possible sum with its exact chance", () => {
    const costs = [...trialsOf(document).trials.cost].map((cost) => Math.round(cost * 1e6) / 1e6);
    const possible = new Set(known.cost.map(([money]) => money));
    expect(costs.filter((cost) => !possible.has(cost))).toEqual([]);
    for (const [money, chance] of known.cost) {
      expectShare(costs.filter((cost) => cost === money).length / costs.length, chance);
    }
  });

  it("has the exact mean, deviation and percentiles", () => {
    expectMean(result.cost.mean, known.mean, known.sd);
    // Standard error of a standard deviation: sd sqrt((kurtosis - 1) / 4n); the kurtosis of this sum is 5.23.
    expectWithin(result.cost.sd, known.sd, 0.041 * known.sd);
    for (const [p, money] of known.percentiles) expect(costAt(result, p)).toBe(money);
  });

  it("reports each risk's expected money among the drivers", () => {
    for (const [id, money] of Object.entries(known.expected)) {
      const driver = result.drivers.find((entry) => entry.id === id);
      // Largest single deviation: 12, of the third (40 at a chance of 0.1).
      expectMean(driver?.money ?? Number.NaN, money, 12);
    }
  });

  it("loses at P80 what removing one risk takes away, in a scenario and in the tornado alike", () => {
    for (const [id, money] of Object.entries(known.p80Without)) {
      expect(costAt(forecastOf(document, { without: [id] }), 0.8)).toBe(money);
      const bar = result.tornado?.find((entry) => entry.id === id);
      expect(bar?.low.money).toBe(money - 21);
    }
    const taken = Object.values(known.p80Without).map((money) => 21 - money);
    expect(taken).toEqual([0, 6, 5, 5]);
  });
});

// Own data, closed form; likelihood times impact: NASA Schedule Management Handbook (2024) sec. 6.3, digest
// read.
describe("forecast(one risk)", () => {
  const { document, known } = oneRisk();
  const result = forecastOf(document);

  it("has a mean of 9 and a median of 0", () => {
    expectMean(result.cost.mean, known.mean, known.sd);
    // Limits as derived from the density at each level: four standard errors.
    for (const [p, money, within] of known.percentiles) expectWithin(costAt(result, p), money, within);
    expectShare(result.cost.asWrittenChance, 0.7);
  });

  it("costs 9 in no future at all", () => {
    const costs = trialsOf(document).trials.cost;
    expect([...costs].filter((cost) => cost > 0 && cost < 10)).toEqual([]);
  });
});

// US GAO, GAO-20-195G ch. 12, table 13, read; answers by enumeration and quadrature. Limits as the case
// states them: mean 0.4 %, percentiles 1 %.
describe("forecast(two risks that multiply one element)", () => {
  const { document, known } = twoDrivers();
  const result = forecastOf(document);

  it("agrees in mean, spread and the chance that neither occurs", () => {
    expectWithin(result.asWritten.cost, known.asWritten, 1e-6);
    expectWithin(result.cost.mean, known.mean, 0.004 * known.mean);
    expectSd(result.cost.sd, known.sd);
    expectShare(result.cost.asWrittenChance, known.asWrittenChance);
  });

  it.each(known.percentiles)("agrees at P%s: %s in money, a hundredth of it in days", (p, money) => {
    expectWithin(costAt(result, p), money, 0.01 * money);
    expectWithin(costAt(result, p), 100 * finishAt(result, p), 1e-6);
  });
});

// Own data, all states enumerated. GAO's remove-one method; its counterpart, one risk alone.
describe("forecast(merging chains with three risks)", () => {
  const { document, known } = mergingRisks();
  const ids = Object.keys(known.removeOne);
  const all = forecastOf(document, { tornado: true });
  // Deviation of the finish in every scenario is below 3 days.
  const limit = (4 * 3) / 100;

  it("finishes on day 20 without risks, on 24.3 on average and on 25 at P80 with all", () => {
    expect(all.asWritten.day).toBe(known.none);
    expectWithin(all.finish.mean, known.mean, limit);
    expect(finishAt(all, 0.8)).toBe(known.p80);
  });

  it.each(ids)("without %s the mean falls and P80 does not move; alone it does as enumerated", (id) => {
    const without = forecastOf(document, { without: [id] });
    const removed = known.removeOne[id];
    expectWithin(all.finish.mean - without.finish.mean, removed?.mean ?? Number.NaN, 2 * limit);
    expect(finishAt(all, 0.8) - finishAt(without, 0.8)).toBe(removed?.p80);
    const alone = forecastOf(document, { confidence: 0.79, without: ids.filter((other) => other !== id) });
    const added = known.addOne[id];
    expectWithin(alone.finish.mean - known.none, added?.mean ?? Number.NaN, limit);
    // Read at P79, the same in the enumeration: alone, the third risk leaves day 20 a chance of 0.8 to the
    // digit, and whether 8,000 of 10,000 iterations keep it is a matter of luck.
    expect(finishAt(alone, 0.79) - known.none).toBe(added?.p80);
  });

  // Absent side of the tornado: P80 does not move; the risks together moved it by five days.
  it("shows the removal of any one risk as no change in the tornado", () => {
    for (const bar of all.tornado ?? []) expect([bar.id, bar.low.workingDays]).toEqual([bar.id, 0]);
    expect(all.tornado?.length).toBeGreaterThan(0);
  });
});
