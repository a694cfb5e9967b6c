import type { TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface RegisterOfFourAnswer {
  /** `[money, chance]`, all of them. */
  cost: readonly (readonly [money: number, chance: number])[];
  mean: number;
  sd: number;
  percentiles: readonly (readonly [p: number, money: number])[];
  /** By risk: expected money, and what P80 loses without it. The latter do not add up to P80. */
  expected: Readonly<Record<string, number>>;
  p80Without: Readonly<Record<string, number>>;
}

/** A plan that costs nothing but what its four fixed-size risks cost: 16 futures, all written down. */
export function registerOfFour(): TestModel<RegisterOfFourAnswer> {
  const risks = [
    ["r1", 0.3, 10],
    ["r2", 0.5, 6],
    ["r3", 0.1, 40],
    ["r4", 0.25, 15],
  ] as const;
  return {
    document: {
      format: 1,
      title: "Register of four",
      start: "2027-03-01",
      calendar: "every-day",
      tasks: [{ id: "work", name: "Work", duration: 5 }],
      risks: risks.map(([id, probability, cost]) => ({
        id,
        name: `Risk ${id}`,
        probability,
        impacts: [{ tasks: ["work"], cost }],
      })),
    },
    known: {
      cost: [
        [0, 0.23625],
        [6, 0.23625],
        [10, 0.10125],
        [15, 0.07875],
        [16, 0.10125],
        [21, 0.07875],
        [25, 0.03375],
        [31, 0.03375],
        [40, 0.02625],
        [46, 0.02625],
        [50, 0.01125],
        [55, 0.00875],
        [56, 0.01125],
        [61, 0.00875],
        [65, 0.00375],
        [71, 0.00375],
      ],
      mean: 13.75,
      sd: 14.7033159525,
      percentiles: [
        [0.5, 10],
        [0.8, 21],
      ],
      expected: { r1: 3, r2: 3, r3: 4, r4: 3.75 },
      p80Without: { r1: 21, r2: 15, r3: 16, r4: 16 },
    },
    source:
      "Own data, 16 states enumerated. Contribution by removing one risk: GAO-16-89G, best practice 8, Prioritizing Risks (read).",
  };
}
