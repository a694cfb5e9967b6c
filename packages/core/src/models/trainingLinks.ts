import { networkDocument } from "./network.ts";
import type { NetworkAnswer, TestModel } from "./testModel.ts";

/**
 * The fourteen tasks of `trainingFourteen`, three of them starting with the task before: 38 days instead of
 * 41, and another critical path.
 */
export function trainingLinks(): TestModel<NetworkAnswer> {
  return {
    document: networkDocument({
      title: "Training network, overlapping",
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
        b: [{ task: "a", link: "start-to-start" }],
        c: ["a"],
        d: ["a"],
        e: ["b"],
        f: ["b"],
        g: ["d"],
        h: ["d"],
        i: ["f"],
        j: ["c", { task: "g", link: "start-to-start" }],
        k: [{ task: "i", link: "start-to-start" }],
        l: ["e", "i", "k"],
        m: ["h"],
        n: ["g", "j", "l", "m"],
      },
    }),
    known: {
      finish: 38,
      critical: ["a", "d", "h", "m", "n"],
      tasks: {
        a: [0, 2, 0],
        b: [0, 10, 4],
        c: [2, 15, 8],
        d: [2, 14, 0],
        e: [10, 22, 5],
        f: [10, 17, 4],
        g: [14, 24, 9],
        h: [14, 30, 0],
        i: [17, 23, 4],
        j: [15, 27, 8],
        k: [17, 22, 5],
        l: [23, 31, 4],
        m: [30, 35, 0],
        n: [35, 38, 0],
      },
    },
    source:
      "Training module on project controls, Network Construction - Precedence Diagram Method (15 March 2019): durations and links read; dates computed by two programs that agree.",
  };
}
