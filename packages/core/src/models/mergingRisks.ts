import type { TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface MergingRisksAnswer {
  none: number;
  /** Mean and P80 of the finish with all three. */
  mean: number;
  p80: number;
  /** By risk: by how much the mean and P80 fall without it, and rise with it alone. */
  removeOne: Readonly<Record<string, { mean: number; p80: number }>>;
  addOne: Readonly<Record<string, { mean: number; p80: number }>>;
}

/**
 * Two chains of 20 and 19 days that end together, one risk on each and one on both. Taking any one risk out
 * leaves P80 where it is, though all three together move it by five days: contributions found so are no
 * shares.
 */
export function mergingRisks(): TestModel<MergingRisksAnswer> {
  const risk = (id: string, name: string, probability: number, tasks: string[], delay: number) => ({
    id,
    name,
    probability,
    impacts: [{ tasks, delay }],
  });
  return {
    document: {
      format: 1,
      title: "Merging risks",
      start: "2027-03-01",
      calendar: "every-day",
      tasks: [
        { id: "left", name: "Left chain", duration: 20 },
        { id: "right", name: "Right chain", duration: 19 },
      ],
      risks: [
        risk("on-left", "Hits the left chain", 0.4, ["left"], 5),
        risk("on-right", "Hits the right chain", 0.5, ["right"], 6),
        risk("on-both", "Hits both", 0.2, ["left", "right"], 4),
      ],
    },
    known: {
      none: 20,
      mean: 24.3,
      p80: 25,
      removeOne: {
        "on-left": { mean: 1, p80: 0 },
        "on-right": { mean: 1.5, p80: 0 },
        "on-both": { mean: 0.8, p80: 0 },
      },
      addOne: {
        "on-left": { mean: 2, p80: 5 },
        "on-right": { mean: 2.5, p80: 5 },
        "on-both": { mean: 0.8, p80: 0 },
      },
    },
    source:
      "Own data, all states enumerated. Remove one risk and run again: GAO-16-89G, best practice 8 (digest read).",
  };
}
