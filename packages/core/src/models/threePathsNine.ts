import type { TestModel } from "./testModel.ts";
import { type ThreePointAnswer, type ThreePointDurations, threePointModel } from "./threePoint.ts";

const source =
  "Stevenson, Operations Management, chapter on project management, advertising firm: data, path means and variances read; early dates and float recomputed by two programs that agree. Simulated answers: an independent program, 6,000,000 iterations.";

const known: ThreePointAnswer = {
  expected: {
    finish: 21.5,
    critical: ["d", "f", "g"],
    tasks: {
      a: [0, 6, 1],
      b: [0, 8.5, 2],
      c: [6, 85 / 6, 1],
      d: [0, 12, 0],
      e: [85 / 6, 20.5, 1],
      f: [12, 18, 0],
      g: [18, 21.5, 0],
      h: [8.5, 76 / 6, 2],
      i: [76 / 6, 19.5, 2],
    },
  },
  likelyFinish: 21,
  pert: {
    mean: 21.893749,
    sd: 1.207948,
    percentiles: [
      [0.05, 20.047929, 0.072858],
      [0.1, 20.381913, 0.065781],
      [0.2, 20.833723, 0.061876],
      [0.5, 21.818525, 0.061973],
      [0.7, 22.485781, 0.068558],
      [0.8, 22.904838, 0.076397],
      [0.9, 23.505123, 0.094327],
      [0.95, 24.012821, 0.118594],
    ],
    chanceBy: [
      [21, 0.244854],
      [24, 0.949057],
    ],
    critical: {
      a: 0.285759,
      b: 0.04365,
      c: 0.285759,
      d: 0.670591,
      e: 0.285759,
      f: 0.670591,
      g: 0.670591,
      h: 0.04365,
      i: 0.04365,
    },
  },
  triangular: {
    mean: 22.514075,
    sd: 1.340373,
    percentiles: [
      [0.05, 20.487463, 0.084693],
      [0.1, 20.863322, 0.072994],
      [0.2, 21.352179, 0.065862],
      [0.5, 22.410846, 0.068283],
      [0.7, 23.157652, 0.078435],
      [0.8, 23.634081, 0.087133],
      [0.9, 24.316065, 0.107269],
      [0.95, 24.893156, 0.134925],
    ],
    chanceBy: [
      [21, 0.124041],
      [24, 0.859889],
    ],
    critical: {
      a: 0.295031,
      b: 0.071255,
      c: 0.295031,
      d: 0.633714,
      e: 0.295031,
      f: 0.633714,
      g: 0.633714,
      h: 0.071255,
      i: 0.071255,
    },
  },
};

/**
 * Nine tasks in three chains that share nothing, so the chance of a date is the product of the three chains'
 * own.
 *
 * With normal chains that is 0.234 for 21 days, where the longest chain alone would promise 0.355.
 */
export function threePathsNine(durations: ThreePointDurations = "pert"): TestModel<ThreePointAnswer> {
  return threePointModel(
    {
      title: "Three paths side by side",
      source,
      estimates: {
        a: [5, 6, 7],
        b: [8, 8, 11],
        c: [6, 8, 11],
        d: [9, 12, 15],
        e: [5, 6, 9],
        f: [5, 6, 7],
        g: [2, 3, 7],
        h: [4, 4, 5],
        i: [5, 7, 8],
      },
      after: { c: ["a"], e: ["c"], f: ["d"], g: ["f"], h: ["b"], i: ["h"] },
    },
    durations,
    known,
  );
}
