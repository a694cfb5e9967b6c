import type { TestModel } from "./testModel.ts";
import { type ThreePointAnswer, type ThreePointDurations, threePointModel } from "./threePoint.ts";

const source =
  "Hillier & Lieberman, Introduction to Operations Research, chapter on project management with PERT/CPM: Reliable Construction Co. Estimates and published results (44 weeks, variance 9, worst case 70) recalled from memory; early dates and float recomputed by two programs that agree. Simulated answers: an independent program, 6,000,000 iterations.";

const known: ThreePointAnswer = {
  expected: {
    finish: 44,
    critical: ["a", "b", "c", "e", "f", "j", "l", "n"],
    tasks: {
      a: [0, 2, 0],
      b: [2, 6, 0],
      c: [6, 16, 0],
      d: [16, 22, 4],
      e: [16, 20, 0],
      f: [20, 25, 0],
      g: [22, 29, 4],
      h: [29, 38, 4],
      i: [16, 23, 2],
      j: [25, 33, 0],
      k: [33, 37, 1],
      l: [33, 38, 0],
      m: [38, 40, 4],
      n: [38, 44, 0],
    },
  },
  likelyFinish: 43,
  pert: {
    mean: 44.325886,
    sd: 2.932212,
    percentiles: [
      [0.05, 39.72816, 0.206024],
      [0.1, 40.633776, 0.174302],
      [0.2, 41.792762, 0.154702],
      [0.5, 44.195729, 0.149971],
      [0.7, 45.805892, 0.165605],
      [0.8, 46.807451, 0.182683],
      [0.9, 48.210527, 0.219939],
      [0.95, 49.367607, 0.270454],
    ],
    chanceBy: [
      [44, 0.473814],
      [47, 0.816542],
      [50, 0.967563],
    ],
    critical: {
      a: 1,
      b: 1,
      c: 1,
      d: 0.098321,
      e: 0.830691,
      f: 0.830691,
      g: 0.098321,
      h: 0.098321,
      i: 0.070988,
      j: 0.901679,
      k: 0.157375,
      l: 0.744304,
      m: 0.098321,
      n: 0.901679,
    },
  },
  triangular: {
    mean: 46.233324,
    sd: 3.692948,
    percentiles: [
      [0.05, 40.401723, 0.263438],
      [0.1, 41.557891, 0.222737],
      [0.2, 43.035547, 0.198393],
      [0.5, 46.087611, 0.189971],
      [0.7, 48.124732, 0.206725],
      [0.8, 49.380321, 0.227641],
      [0.9, 51.126244, 0.270367],
      [0.95, 52.548716, 0.32484],
    ],
    chanceBy: [
      [44, 0.2853],
      [47, 0.593847],
      [50, 0.840625],
    ],
    critical: {
      a: 1,
      b: 1,
      c: 1,
      d: 0.31516,
      e: 0.648159,
      f: 0.648159,
      g: 0.31516,
      h: 0.31516,
      i: 0.036681,
      j: 0.68484,
      k: 0.204402,
      l: 0.480438,
      m: 0.31516,
      n: 0.68484,
    },
  },
};

/**
 * Fourteen tasks of a building job, in weeks (here days): one chain to the rough wall, then outside and
 * inside work.
 *
 * The textbook's normal approximation gives a chance of 0.841 of 47 weeks; drawn from beta-PERT it is 0.817,
 * from triangular 0.594: the shape of the estimates matters more than the merging paths.
 */
export function constructionFourteen(durations: ThreePointDurations = "pert"): TestModel<ThreePointAnswer> {
  return threePointModel(
    {
      title: "Reliable Construction",
      source,
      estimates: {
        a: [1, 2, 3],
        b: [2, 3.5, 8],
        c: [6, 9, 18],
        d: [4, 5.5, 10],
        e: [1, 4.5, 5],
        f: [4, 4, 10],
        g: [5, 6.5, 11],
        h: [5, 8, 17],
        i: [3, 7.5, 9],
        j: [3, 9, 9],
        k: [4, 4, 4],
        l: [1, 5.5, 7],
        m: [1, 2, 3],
        n: [5, 5.5, 9],
      },
      after: {
        b: ["a"],
        c: ["b"],
        d: ["c"],
        e: ["c"],
        f: ["e"],
        g: ["d"],
        h: ["e", "g"],
        i: ["c"],
        j: ["f", "i"],
        k: ["j"],
        l: ["j"],
        m: ["h"],
        n: ["k", "l"],
      },
      names: {
        a: "Excavate",
        b: "Lay the foundation",
        c: "Put up the rough wall",
        d: "Put up the roof",
        e: "Install the exterior plumbing",
        f: "Install the interior plumbing",
        g: "Put up the exterior siding",
        h: "Do the exterior painting",
        i: "Do the electrical work",
        j: "Put up the wallboard",
        k: "Install the flooring",
        l: "Do the interior painting",
        m: "Install the exterior fixtures",
        n: "Install the interior fixtures",
      },
    },
    durations,
    known,
  );
}
