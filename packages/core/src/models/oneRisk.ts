import type { TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface OneRiskAnswer {
  mean: number;
  sd: number;
  /** `[p, money, within]`: `within` for 10,000 iterations. */
  percentiles: readonly (readonly [p: number, money: number, within: number])[];
}

/**
 * One risk, chance 0.3, triangular cost: half of the futures, and seven tenths, cost nothing, yet the mean is
 * 9. Why an expected value is no contingency: in no future does it pay the bill.
 */
export function oneRisk(): TestModel<OneRiskAnswer> {
  return {
    document: {
      format: 1,
      title: "One risk",
      start: "2027-03-01",
      calendar: "every-day",
      tasks: [{ id: "work", name: "Work", duration: 5 }],
      risks: [
        {
          id: "flood",
          name: "The cellar floods",
          probability: 0.3,
          impacts: [{ tasks: ["work"], cost: { low: 10, likely: 20, high: 60, shape: "triangular" } }],
        },
      ],
    },
    known: {
      mean: 9,
      sd: 14.966629,
      percentiles: [
        [0.5, 0, 0],
        [0.8, 23.485162, 1],
        [0.9, 34.180111, 1.2],
      ],
    },
    source:
      "Own data; closed form of an occurrence times a triangular size. Risk as likelihood times impact: NASA Schedule Management Handbook (2024), sec. 6.3 (digest read).",
  };
}
