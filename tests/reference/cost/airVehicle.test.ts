/**
 * US GAO, Cost Estimating and Assessment Guide, GAO-20-195G (2020), ch. 12, table 12, UAV air vehicle: ranges
 * and point estimate read; P50 of 2.611 billion dollars for 32 vehicles and about 0.024 that correlation adds
 * at P80 read in a digest. Answers exact (rational arithmetic) or from 4,000,000 draws; tolerances four
 * standard errors.
 */
import { describe, expect, it } from "vitest";
import { airVehicle } from "../../../packages/core/src/models/index.ts";
import { costAt, forecastOf } from "../integrated/runPlan.ts";
import { expectMean, expectSd, expectShare, expectWithin } from "../integrated/tolerances.ts";

const { document, known } = airVehicle();
const exact = known.exact;
if (exact === undefined) throw new Error("the uncorrelated model has exact answers");

describe("forecast(air vehicle), elements independent", () => {
  const result = forecastOf(document, { confidence: 0.7 });

  it("adds the point estimate up: 77,092 thousand", () => {
    expect(result.asWritten.cost).toBe(77092);
    expect(known.asWritten).toBe(77092);
  });

  it("agrees in mean, spread and the chance that the point estimate is enough", () => {
    expectMean(result.cost.mean, 82244, 4599.605810405);
    expectSd(result.cost.sd, 4599.605810405);
    expectShare(result.cost.asWrittenChance, exact.asWrittenChance);
  });

  it.each(exact.percentiles)("agrees at P%s: %s", (p, value, within) => {
    expectWithin(costAt(result, p), value, within);
  });

  it("finds GAO's 2.611 billion dollars for 32 vehicles at P50", () => {
    // Four standard errors of P50 are 263 thousand a vehicle; half a unit of GAO's last digit comes on top.
    expectWithin((costAt(result, 0.5) * 32) / 1e6, 2.611, (262.9 * 32) / 1e6 + 0.0005);
  });

  it("finds 299 million dollars of contingency at P80 for 32 vehicles", () => {
    const at80 = forecastOf(document, { confidence: 0.8 });
    expectWithin((at80.contingency.money * 32) / 1e6, 0.299339, (334.84 * 32) / 1e6);
  });

  // GAO-20-195G ch. 12: percentiles do not add. The parts' own P80 add to 1,908 thousand more than that of
  // the whole.
  it("has a P80 below the sum of the elements' own P80", () => {
    const alone = Object.entries(exact.p80Alone).map(([id, value]) => {
      const own = costAt(forecastOf(airVehicle({ only: id }).document), 0.8);
      // One estimate alone is stratified in blocks of 1,024 draws: its P80 is off by 0.0035 of probability at
      // most, the last, partial block included; a hundredth of the P10-P90 distance is more than that in
      // every element.
      expectWithin(own, value, 0.01 * (exact.swing[id] ?? Number.NaN));
      return own;
    });
    const excess = alone.reduce((sum, value) => sum + value, 0) - costAt(result, 0.8);
    expectWithin(excess, 1908.430949, 334.84 + 157);
  });

  // In a sum, holding one element at its P10 or its P90 shifts one and the same remainder, so the bar of the
  // tornado is as long as the element's own P10-P90 distance, whatever the percentile. Limit: the engine's
  // P10 and P90.
  it("shows each element's own swing in the tornado, largest first", () => {
    const { tornado = [] } = forecastOf(document, { tornado: true });
    expect(tornado.map((bar) => bar.id)).toEqual([
      "software",
      "propulsion",
      "airframe",
      "communications",
      "integration",
      "navigation",
      "computer",
    ]);
    for (const bar of tornado) {
      expectWithin(bar.high.money - bar.low.money, exact.swing[bar.id] ?? Number.NaN, 1e-3);
      expect(bar.kind).toBe("task-cost");
    }
  });
});

// Book, Why Correlation Matters in Cost Estimating (1999), recalled: Var = sum s^2 + r ((sum s)^2 - sum s^2).
// Scores are correlated, the triangulars slightly less: 3 % on the spread; P10 to P90 within 0.012 billion
// for 32.
describe("forecast(air vehicle), every pair correlated", () => {
  it.each([
    [0, 4599.605810405],
    [0.2, 5072.2047210778],
    [0.3, 5292.7029288663],
    [0.5, 5708.2038694009],
    [0.9, 6459.5174477254],
    [1, 6634.0643061532],
  ])("coefficient %s: spread %s, mean unchanged", (correlation, sd) => {
    const model = airVehicle({ correlation });
    expectWithin(model.known.sd, sd, 1e-6 * sd);
    const result = forecastOf(model.document);
    expectWithin(result.cost.sd, sd, 0.03 * sd);
    expectMean(result.cost.mean, 82244, sd);
  });

  it.each([0.3, 0.9])("coefficient %s: percentiles and the chance of the point estimate", (correlation) => {
    const model = airVehicle({ correlation });
    const result = forecastOf(model.document);
    const { simulated } = model.known;
    if (simulated === undefined) throw new Error("0.3 and 0.9 have simulated answers");
    for (const [p, value] of simulated.percentiles) expectWithin(costAt(result, p), value, 0.012e6 / 32);
    expectShare(result.cost.asWrittenChance, simulated.asWrittenChance);
  });
});
