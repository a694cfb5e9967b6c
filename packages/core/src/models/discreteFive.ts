import type { Json } from "../plan/source/toJson.ts";
import { networkDocument } from "./network.ts";
import type { PlanData, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface DiscreteFiveAnswer {
  /** `[days, chance]`, all of them. */
  finish: readonly (readonly [days: number, chance: number])[];
  mean: number;
  sd: number;
  /** Smallest finish with at least that chance. */
  percentiles: readonly (readonly [p: number, days: number])[];
  critical: Readonly<Record<string, number>>;
  durations: Readonly<Record<string, number>>;
  /** The finish with every duration at its mean: short of the mean finish, because paths merge. */
  finishAtMeans: number;
}

/** `[[value, chance], [value, chance]]` as an estimate of the plan format. */
const either = (a: number, chance: number, b: number): Json => ({
  outcomes: [
    { value: a, chance },
    { value: b, chance: Math.round((1 - chance) * 100) / 100 },
  ],
});

/**
 * Five tasks with two possible durations each, so that all 32 futures can be written down: A and B first, C
 * after A, D after both, E last. `keys` are added to the document (people, register, money).
 */
export function discreteFive(keys: PlanData = {}): TestModel<DiscreteFiveAnswer> {
  return {
    document: networkDocument(
      {
        title: "Five tasks, 32 futures",
        durations: {
          a: either(3, 0.5, 5),
          b: either(4, 0.7, 6),
          c: either(2, 0.6, 5),
          d: either(3, 0.5, 4),
          e: either(1, 0.8, 2),
        },
        after: { c: ["a"], d: ["a", "b"], e: ["c", "d"] },
      },
      keys,
    ),
    known: {
      finish: [
        [8, 0.084],
        [9, 0.301],
        [10, 0.25],
        [11, 0.301],
        [12, 0.064],
      ],
      mean: 9.96,
      sd: 1.0919706956,
      percentiles: [
        [0.5, 10],
        [0.8, 11],
        [0.9, 11],
      ],
      critical: { a: 0.55, b: 0.55, c: 0.34, d: 0.76, e: 1 },
      durations: { a: 4, b: 4.6, c: 3.2, d: 3.5, e: 1.2 },
      finishAtMeans: 9.3,
    },
    source:
      "Own data; every combination enumerated by another program, in the spirit of Van Slyke (1963) and MacCrimmon & Ryavec (1964). Criticality index with ties critical on every path: Vanhoucke, Measuring Time (2010).",
  };
}
