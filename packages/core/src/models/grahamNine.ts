import { networkDocument } from "./network.ts";
import type { PlanData, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface GrahamNineAnswer {
  /** When whoever is free takes the first task of the list that is ready: published. */
  takingTurns: number;
  /** When tasks are placed one by one in the order of the list, as the plan format does. */
  oneByOne: number;
}

/**
 * Graham's nine tasks on a team of three, in the order of his list; `shorter` takes one day off every task.
 *
 * Under his scheduler, which gives whoever is free the first task that is ready, the shorter tasks end later:
 * 13 against 12. Placed one by one they do not (13 against 17), in this or any other order; `timingAnomaly`
 * is an instance on which they do.
 */
export function grahamNine(shorter: boolean): TestModel<GrahamNineAnswer> {
  const durations = { t1: 3, t2: 2, t3: 2, t4: 2, t5: 4, t6: 4, t7: 4, t8: 4, t9: 9 };
  const document = networkDocument(
    {
      title: "Nine tasks on a team of three",
      durations: Object.fromEntries(
        Object.entries(durations).map(([id, duration]) => [id, shorter ? duration - 1 : duration]),
      ),
      after: { t5: ["t4"], t6: ["t4"], t7: ["t4"], t8: ["t4"], t9: ["t1"] },
    },
    { people: [{ id: "team", name: "Team", capacity: 3 }] },
  );
  const tasks = (document.tasks as { id: string }[]).map(
    (task, k): PlanData => ({
      ...task,
      people: ["team"],
      priority: 9 - k,
    }),
  );
  return {
    document: { ...document, tasks },
    known: shorter ? { takingTurns: 13, oneByOne: 13 } : { takingTurns: 12, oneByOne: 17 },
    source:
      "Graham, Bounds on multiprocessing timing anomalies, SIAM Journal on Applied Mathematics 17(2), 1969, 416-429: nine tasks, three processors, 12 and 13, recalled and recomputed; one-by-one lengths by a second program, all orders tried.",
  };
}
