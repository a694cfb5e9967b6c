import type { TestModel } from "./testModel.ts";
import { type ThreePointAnswer, type ThreePointDurations, threePointModel } from "./threePoint.ts";

const source =
  "Winston, Operations Research: Applications and Algorithms, 4th ed., sec. 8.4 (Widgetco). Activities, predecessors and durations read; three-point estimates and published results (38 days, variance 7.22, chance of 35 days 0.13) recalled; early dates and float recomputed by two programs that agree. Simulated answers: an independent program, 6,000,000 iterations.";

const known: ThreePointAnswer = {
  expected: {
    finish: 38,
    critical: ["b", "d", "e", "f"],
    tasks: { a: [0, 6, 3], b: [0, 9, 0], c: [9, 17, 9], d: [9, 16, 0], e: [16, 26, 0], f: [26, 38, 0] },
  },
  likelyFinish: 38,
  pert: {
    mean: 38.073473,
    sd: 3.009387,
    percentiles: [
      [0.05, 33.122605, 0.236976],
      [0.1, 34.156446, 0.197859],
      [0.2, 35.462049, 0.173652],
      [0.5, 38.071071, 0.156491],
      [0.7, 39.705172, 0.164811],
      [0.8, 40.67996, 0.173238],
      [0.9, 41.990963, 0.200408],
      [0.95, 43.03783, 0.236212],
    ],
    chanceBy: [
      [35, 0.159821],
      [38, 0.490894],
    ],
    critical: { a: 0.084109, b: 0.915891, c: 0.00043, d: 0.99957, e: 0.99957, f: 1 },
  },
  triangular: {
    mean: 38.102056,
    sd: 3.242732,
    percentiles: [
      [0.05, 32.761921, 0.255313],
      [0.1, 33.888854, 0.216337],
      [0.2, 35.302105, 0.186859],
      [0.5, 38.098212, 0.168292],
      [0.7, 39.851976, 0.175142],
      [0.8, 40.89937, 0.18836],
      [0.9, 42.321663, 0.21365],
      [0.95, 43.454866, 0.257015],
    ],
    chanceBy: [
      [35, 0.17514],
      [38, 0.488333],
    ],
    critical: { a: 0.101143, b: 0.898857, c: 0.001545, d: 0.998455, e: 0.998455, f: 1 },
  },
};

/**
 * Six tasks in days, symmetric estimates. A worked answer of 39 days that circulates is wrong: C does not
 * precede E.
 */
export function productSix(durations: ThreePointDurations = "pert"): TestModel<ThreePointAnswer> {
  return threePointModel(
    {
      title: "Six steps to a product",
      source,
      estimates: {
        a: [2, 6, 10],
        b: [5, 9, 13],
        c: [3, 8, 13],
        d: [1, 7, 13],
        e: [8, 10, 12],
        f: [9, 12, 15],
      },
      after: { c: ["a", "b"], d: ["a", "b"], e: ["d"], f: ["c", "e"] },
    },
    durations,
    known,
  );
}
