import { networkDocument } from "./network.ts";
import type { NetworkAnswer, TestModel } from "./testModel.ts";

/**
 * Fourteen tasks with finish-to-start links only; `trainingLinks` is the same work with some of it
 * overlapping.
 */
export function trainingFourteen(): TestModel<NetworkAnswer> {
  return {
    document: networkDocument({
      title: "Training network",
      durations: {
        a: 2,
        b: 10,
        c: 13,
        d: 12,
        e: 12,
        f: 7,
        g: 10,
        h: 16,
        i: 6,
        j: 12,
        k: 5,
        l: 8,
        m: 5,
        n: 3,
      },
      after: {
        b: ["a"],
        c: ["a"],
        d: ["a"],
        e: ["b"],
        f: ["b"],
        g: ["d"],
        h: ["d"],
        i: ["f"],
        j: ["c", "g"],
        k: ["i"],
        l: ["e", "k"],
        m: ["h"],
        n: ["j", "l", "m"],
      },
    }),
    known: {
      finish: 41,
      critical: ["a", "b", "f", "i", "k", "l", "n"],
      tasks: {
        a: [0, 2, 0],
        b: [2, 12, 0],
        c: [2, 15, 11],
        d: [2, 14, 2],
        e: [12, 24, 6],
        f: [12, 19, 0],
        g: [14, 24, 2],
        h: [14, 30, 3],
        i: [19, 25, 0],
        j: [24, 36, 2],
        k: [25, 30, 0],
        l: [30, 38, 0],
        m: [30, 35, 3],
        n: [38, 41, 0],
      },
    },
    source:
      "Training module on project controls, Network Construction - Critical Path Method: data, the five path lengths (35, 41, 30, 39, 38) and the critical path read; dates recomputed by two programs that agree.",
  };
}
