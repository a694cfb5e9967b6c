import { networkDocument } from "./network.ts";
import type { PlanData, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface TimingAnomalyAnswer {
  /** With the durations as they stand, and with each one day shorter: later. */
  finish: number;
  finishShorter: number;
  /** If people were without limit the shorter one ends earlier, as one would expect. */
  unlimited: number;
  unlimitedShorter: number;
}

/**
 * Five tasks on a team of two that finish two days LATER when every task gets one day SHORTER.
 *
 * Task E, placed last, needs six days and fits exactly beside A and B, which take six days and leave one
 * person idle. When all are a day shorter that gap shrinks to four days while E still needs five, so E no
 * longer fits and has to wait until C and D have released the team: 14 days instead of 12.
 *
 * `durations`: as they stand, each a day shorter, or `either`: the shortening is an opportunity of chance
 * 0.5, so that one forecast holds both futures.
 */
export function timingAnomaly(
  durations: "standing" | "shorter" | "either" = "standing",
): TestModel<TimingAnomalyAnswer> {
  const ids = ["a", "b", "c", "d", "e"];
  const less = durations === "shorter" ? 1 : 0;
  const document = networkDocument(
    {
      title: "Shorter and later",
      durations: { a: 4 - less, b: 2 - less, c: 6 - less, d: 6 - less, e: 6 - less },
      after: { b: ["a"], c: ["b"], d: ["b"] },
    },
    {
      people: [{ id: "team", name: "Team", capacity: 2 }],
      ...(durations === "either"
        ? {
            risks: [
              {
                id: "quick",
                name: "All goes a day faster",
                probability: 0.5,
                impacts: [{ tasks: ids, delay: -1 }],
              },
            ],
          }
        : {}),
    },
  );
  const tasks = (document.tasks as PlanData[]).map((task) => ({ ...task, people: ["team"] }));
  return {
    document: { ...document, tasks },
    known: { finish: 12, finishShorter: 14, unlimited: 12, unlimitedShorter: 9 },
    source:
      "Own instance of the anomaly of Graham, Bounds for certain multiprocessing anomalies, Bell System Technical Journal 45(9), 1966, 1563-1581, and SIAM Journal on Applied Mathematics 17(2), 1969, 416-429 (recalled); found by search, recomputed by a second program. The scheme that places tasks one by one: Kelley (1963); Kolisch, EJOR 90 (1996) 320-333 (recalled).",
  };
}
