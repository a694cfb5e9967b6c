/** Date and money together: counting, the equal level, and the pairs of equal chance, on points with known answers. */
import { describe, expect, it } from "vitest";
import { equalLevel } from "../../../packages/core/src/explain/joint/equalLevel.ts";
import { equalPairs } from "../../../packages/core/src/explain/joint/equalPairs.ts";
import { jointChance } from "../../../packages/core/src/explain/joint/jointChance.ts";
import { normalScore, whyConfidence } from "../../../packages/core/src/index.ts";
import { planWithRegister } from "../../../packages/core/src/models/index.ts";
import { planFrom, seed } from "../integrated/runPlan.ts";
import { expectShare, expectWithin } from "../integrated/tolerances.ts";

// Method: NASA Cost Estimating Handbook 4.0, scatter plot of appendix J: points in the lower left quadrant over all
// points (digest read). The ten points are invented; some lie on the targets, and meeting a target keeps it.
const points = [
  [10, 100],
  [11, 130],
  [12, 95],
  [12, 120],
  [13, 150],
  [14, 110],
  [15, 160],
  [15, 125],
  [16, 140],
  [18, 170],
] as const;
const times = points.map(([time]) => time);
const sums = points.map(([, sum]) => sum);

describe("ten points", () => {
  it("count 5 of 10 within day 14 and 130, 6 within either alone", () => {
    expect(jointChance(times, sums, 14, 130)).toEqual({ finish: 0.6, cost: 0.6, both: 0.5 });
  });

  it("keep half together on three pairs, worked by hand", () => {
    // Up to day 13 there are five points, the dearest 150. Day 14 adds 110: the fifth cheapest is 130. Day 15 adds
    // 125 (and 160): 95, 100, 110, 120, 125. Later points are dearer.
    expect(equalPairs(times, sums, 5)).toEqual([
      { day: 13, cost: 150 },
      { day: 14, cost: 130 },
      { day: 15, cost: 125 },
    ]);
  });

  it("keep all together only at the latest day and the largest sum", () => {
    expect(equalPairs(times, sums, 10)).toEqual([{ day: 18, cost: 170 }]);
    expect(equalPairs(times, sums, 11)).toEqual([]);
  });

  it("need the sixth of each for half together, worked by hand", () => {
    // The larger of the two places of each point: (1,2) 2, (2,6) 6, (3,1) 3, (3,4) 4, (5,8) 8, (6,3) 6, (7,9) 9,
    // (7,5) 7, (9,7) 9, 10. In order 2 3 4 6 6 ...: the fifth is 6, which is day 14 and 130.
    expect(equalLevel(times, sums, 5)).toEqual({ level: 0.6, day: 14, cost: 130 });
  });
});

// A bivariate normal; values by SciPy's distribution function. NASA Schedule Management Handbook (2024), sec. 6.3
// (digest read): a joint 70 % asks for about the 78th to 84th percentile of each. The points are a Fibonacci lattice
// (196,418 points, generator 121,393; Niederreiter 1992, recalled) put through the inverse normal: no chance in it.
// Tolerance 2e-4, forty steps of the level.
describe("points of a bivariate normal", () => {
  const n = 196_418;
  const lattice = (correlation: number) => {
    const days = new Float64Array(n);
    const costs = new Float64Array(n);
    for (let k = 0; k < n; k++) {
      const a = normalScore((k + 0.5) / n);
      const b = normalScore((((k * 121_393) % n) + 0.5) / n);
      days[k] = a;
      costs[k] = correlation * a + Math.sqrt(1 - correlation ** 2) * b;
    }
    return { days, costs };
  };

  it.each([
    [0, 0.8366600084, Math.SQRT1_2, 0.49],
    [0.3, 0.8228268202, 0.6780570428, 0.5281428132],
    [0.5, 0.8093123915, 0.6530319053, 0.5567673207],
    [0.6, 0.8005769883, 0.6379899699, 0.5727483627],
    [0.7, 0.7898464275, 0.6204573398, 0.5905185813],
    [0.8, 0.7760089842, 0.5991258807, 0.6111802474],
    [0.9, 0.756183156, 0.5706356459, 0.6375869253],
  ])(
    "correlation %s: the equal level for 0.7 is %s, for 0.5 %s; both at P70 are %s together",
    (correlation, for70, for50, at70) => {
      const { days, costs } = lattice(correlation);
      expectWithin(equalLevel(days, costs, Math.ceil(0.7 * n)).level, for70, 2e-4);
      expectWithin(equalLevel(days, costs, Math.ceil(0.5 * n)).level, for50, 2e-4);
      const z = normalScore(0.7);
      expectWithin(jointChance(days, costs, z, z).both, at70, 2e-4);
    },
  );
});

// Own data; all 128 futures enumerated by another program. Limits: four standard errors at 10,000 iterations.
describe("whyConfidence(plan with register), before and after the response", () => {
  const { document, known } = planWithRegister();
  const plan = planFrom(document);
  it.each([
    ["before", [], known.before],
    ["after", ["second-source"], known.after],
  ] as const)("%s: the chances of what is asked", (_, taken, state) => {
    const asked = whyConfidence(plan, { seed, with: taken }).confidence?.joint.asked;
    expectShare(asked?.finishLevel ?? Number.NaN, state.finishBy);
    expectShare(asked?.costLevel ?? Number.NaN, state.budget);
    expectShare(asked?.both ?? Number.NaN, state.both);
    expect([asked?.date, asked?.day, asked?.cost]).toEqual(["2027-03-11", 11, 320]);
  });
});
