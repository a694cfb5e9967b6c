import type { TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface TwoDriversAnswer {
  asWritten: number;
  mean: number;
  sd: number;
  /** Chance that neither occurs. */
  asWrittenChance: number;
  percentiles: readonly (readonly [p: number, money: number])[];
}

/**
 * Two risks that multiply the same element: each a factor that is 1 when it does not occur. The element is
 * 196.45 days of work at 100 thousand dollars a day, so days and money tell the same story.
 */
export function twoDrivers(): TestModel<TwoDriversAnswer> {
  const driver = (id: string, name: string, probability: number, factor: [number, number, number]) => ({
    id,
    name,
    probability,
    impacts: [
      {
        tasks: ["airframe"],
        factor: { low: factor[0], likely: factor[1], high: factor[2], shape: "triangular" },
      },
    ],
  });
  return {
    document: {
      format: 1,
      title: "Airframe with two risk drivers",
      start: "2027-03-01",
      currency: "USD",
      calendar: "every-day",
      tasks: [{ id: "airframe", name: "Airframe", duration: 196.45, costPerDay: 100 }],
      risks: [
        driver("material", "Material is late or defective", 0.8, [1, 1.05, 1.3]),
        driver("producibility", "Complex airframe producibility", 0.25, [1, 1.1, 1.25]),
      ],
    },
    known: {
      asWritten: 19645,
      mean: 22104.990555,
      sd: 1945.980437,
      asWrittenChance: 0.15,
      percentiles: [
        [0.5, 21827.814201],
        [0.8, 23697.477574],
        [0.9, 24698.495183],
      ],
    },
    source:
      "US GAO, GAO-20-195G (2020), ch. 12, table 13: likelihoods and factors read, their assignment to one element ours. Answers: occurrence states enumerated, quadrature within each; checked with 4,000,000 draws.",
  };
}
