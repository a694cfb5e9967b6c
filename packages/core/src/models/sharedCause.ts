import type { PlanData, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface SharedCauseAnswer {
  /** Correlation of the two realised durations. */
  correlation: number;
}

/**
 * Two tasks side by side that a common risk multiplies by one and the same draw; with `own`, each also has a
 * risk of its own. They move together without any coefficient: naming the cause is enough.
 */
export function sharedCause(own: boolean): TestModel<SharedCauseAnswer> {
  const risk = (
    id: string,
    probability: number,
    tasks: string[],
    [low, likely, high]: number[],
  ): PlanData => ({
    id,
    name: `Risk ${id}`,
    probability,
    impacts: [
      { tasks, factor: { low: low ?? 1, likely: likely ?? 1, high: high ?? 1, shape: "triangular" } },
    ],
  });
  return {
    document: {
      format: 1,
      title: "A shared cause",
      start: "2027-03-01",
      calendar: "every-day",
      tasks: [
        { id: "north", name: "North wing", duration: 100 },
        { id: "south", name: "South wing", duration: 100 },
      ],
      risks: [
        risk("common", 0.5, ["north", "south"], [0.95, 1.05, 1.15]),
        ...(own
          ? [
              risk("north-own", 0.25, ["north"], [0.8, 0.95, 1.05]),
              risk("south-own", 0.25, ["south"], [0.8, 0.95, 1.05]),
            ]
          : []),
      ],
    },
    known: { correlation: own ? 0.473046 : 1 },
    source:
      "Hulett, Practical Schedule Risk Analysis (2009), chapter on risk drivers: 100 % and about 48 % recalled; the exact 0.473 from closed-form moments.",
  };
}
