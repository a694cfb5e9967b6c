import { networkDocument } from "./network.ts";
import type { PlanData, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface CrewOfFourAnswer {
  /** The finish, and each task's start, when tasks are placed in the order b, d, a, f, c, e. */
  finish: number;
  starts: Readonly<Record<string, number>>;
  /** Shortest and longest finish over all 20 orders that respect the links. */
  shortest: number;
  longest: number;
  /** The finish if people were without limit. */
  unlimited: number;
}

/**
 * Six tasks that share a crew of four, each asking for two, three or all of them. Placed one by one in the
 * published order they take 13 days, the shortest possible; without `published` the plan format's own order
 * (longest tail first) takes 16, which shows that no fixed rule is best.
 */
export function crewOfFour(published = true): TestModel<CrewOfFourAnswer> {
  const order = ["b", "d", "a", "f", "c", "e"];
  const share: Record<string, number> = { a: 2, b: 3, c: 4, d: 4, e: 3, f: 2 };
  const document = networkDocument(
    {
      title: "A crew of four",
      durations: { a: 3, b: 4, c: 2, d: 2, e: 1, f: 4 },
      after: { c: ["a"], e: ["c"], d: ["b"], f: ["d"] },
    },
    { people: [{ id: "crew", name: "Crew", capacity: 4 }] },
  );
  const tasks = (document.tasks as { id: string }[]).map((task): PlanData => {
    const people = [{ id: "crew", share: share[task.id] ?? 1 }];
    return { ...task, people, ...(published ? { priority: order.length - order.indexOf(task.id) } : {}) };
  });
  return {
    document: { ...document, tasks },
    known: {
      finish: published ? 13 : 16,
      starts: published ? { a: 6, b: 0, c: 10, d: 4, e: 12, f: 6 } : { a: 4, b: 0, c: 13, d: 7, e: 15, f: 9 },
      shortest: 13,
      longest: 16,
      unlimited: 10,
    },
    source:
      "Hartmann, A competitive genetic algorithm for resource-constrained project scheduling, Naval Research Logistics 45 (1998) 733-750, example with activity list (2, 4, 1, 6, 3, 5) and 13 periods, recalled; recomputed by placing the tasks in each of the 20 possible orders.",
  };
}
