import type { TestModel } from "./testModel.ts";
import { type ThreePointAnswer, type ThreePointDurations, threePointModel } from "./threePoint.ts";

const source =
  "Anderson, Sweeney, Williams et al., An Introduction to Management Science, ch. 9, tables 9.3-9.6 (Daugherty Porta-Vac). Estimates and predecessors read; published 17 weeks, variance 2.72 and 0.9656 recalled; early dates and float recomputed by two programs that agree. Simulated answers: an independent program, 6,000,000 iterations.";

const known: ThreePointAnswer = {
  expected: {
    finish: 17,
    critical: ["a", "e", "h", "i", "j"],
    tasks: {
      a: [0, 6, 0],
      b: [0, 2, 7],
      c: [6, 9, 4],
      d: [6, 11, 1],
      e: [6, 9, 0],
      f: [9, 11, 4],
      g: [11, 14, 1],
      h: [9, 13, 0],
      i: [13, 15, 0],
      j: [15, 17, 0],
    },
  },
  likelyFinish: 15.5,
  pert: {
    mean: 17.31672,
    sd: 1.696748,
    percentiles: [
      [0.05, 14.79033, 0.099545],
      [0.1, 15.236698, 0.088334],
      [0.2, 15.836991, 0.082081],
      [0.5, 17.168672, 0.086512],
      [0.7, 18.118051, 0.09933],
      [0.8, 18.728853, 0.11222],
      [0.9, 19.607661, 0.138275],
      [0.95, 20.351782, 0.174364],
    ],
    chanceBy: [
      [17, 0.460665],
      [20, 0.929702],
    ],
    critical: {
      a: 1,
      b: 0,
      c: 0,
      d: 0.269001,
      e: 0.730999,
      f: 0,
      g: 0.269001,
      h: 0.730999,
      i: 0.730999,
      j: 1,
    },
  },
  triangular: {
    mean: 19.178711,
    sd: 2.263401,
    percentiles: [
      [0.05, 15.746945, 0.130387],
      [0.1, 16.343324, 0.119417],
      [0.2, 17.161867, 0.113321],
      [0.5, 19.010807, 0.119763],
      [0.7, 20.318659, 0.134646],
      [0.8, 21.138448, 0.147485],
      [0.9, 22.264051, 0.17351],
      [0.95, 23.165916, 0.206247],
    ],
    chanceBy: [
      [17, 0.177678],
      [20, 0.655377],
    ],
    critical: {
      a: 1,
      b: 0,
      c: 0,
      d: 0.392418,
      e: 0.607582,
      f: 0,
      g: 0.392418,
      h: 0.607582,
      i: 0.607582,
      j: 1,
    },
  },
};

/**
 * Ten tasks from design to market test, in weeks (here days).
 *
 * The textbook's normal approximation gives a chance of 0.966 of 20 weeks; drawn from beta-PERT it is 0.930.
 */
export function vacuumTen(durations: ThreePointDurations = "pert"): TestModel<ThreePointAnswer> {
  return threePointModel(
    {
      title: "Cordless vacuum cleaner",
      source,
      estimates: {
        a: [4, 5, 12],
        b: [1, 1.5, 5],
        c: [2, 3, 4],
        d: [3, 4, 11],
        e: [2, 3, 4],
        f: [1.5, 2, 2.5],
        g: [1.5, 3, 4.5],
        h: [2.5, 3.5, 7.5],
        i: [1.5, 2, 2.5],
        j: [1, 2, 3],
      },
      after: {
        c: ["a"],
        d: ["a"],
        e: ["a"],
        f: ["c"],
        g: ["d"],
        h: ["b", "e"],
        i: ["h"],
        j: ["f", "g", "i"],
      },
    },
    durations,
    known,
  );
}
