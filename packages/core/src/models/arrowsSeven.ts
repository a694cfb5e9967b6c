import { networkDocument } from "./network.ts";
import type { NetworkAnswer, TestModel } from "./testModel.ts";

/**
 * Seven activities on arrows; a task is named by the events its arrow joins (`e1-2`).
 */
export function arrowsSeven(): TestModel<NetworkAnswer> {
  return {
    document: networkDocument({
      title: "Seven arrows",
      durations: { "e1-2": 7, "e1-3": 10, "e2-4": 6, "e3-4": 5, "e3-5": 4, "e4-5": 3, "e5-6": 2 },
      after: {
        "e2-4": ["e1-2"],
        "e3-4": ["e1-3"],
        "e3-5": ["e1-3"],
        "e4-5": ["e2-4", "e3-4"],
        "e5-6": ["e3-5", "e4-5"],
      },
    }),
    known: {
      finish: 20,
      critical: ["e1-3", "e3-4", "e4-5", "e5-6"],
      tasks: {
        "e1-2": [0, 7, 2],
        "e1-3": [0, 10, 0],
        "e2-4": [7, 13, 2],
        "e3-4": [10, 15, 0],
        "e3-5": [10, 14, 4],
        "e4-5": [15, 18, 0],
        "e5-6": [18, 20, 0],
      },
    },
    source:
      "Taylor, Introduction to Management Science, ch. 8, solutions manual p. 114: durations and the whole table of early dates, late dates and slack, read.",
  };
}
