/** Small published schedules with limited people, recomputed by schedulers that share nothing with the engine. */
import { describe, expect, it } from "vitest";
import {
  crewOfFour,
  grahamNine,
  type PlanData,
  timingAnomaly,
} from "../../../packages/core/src/models/index.ts";
import { finishAt, forecastOf, trialsOf } from "../integrated/runPlan.ts";
import { expectShare } from "../integrated/tolerances.ts";
import { allOrders, type CrewTask, lengthOf, oneByOne, takingTurns } from "./schedules.ts";

interface TaskData {
  id: string;
  duration: number;
  after: string[];
  people: (string | { share: number })[];
}

/** The tasks of a model's document, as the slow schedulers want them. */
function crewTasks(document: PlanData): CrewTask[] {
  return (document.tasks as unknown as TaskData[]).map(({ id, duration, after, people }) => {
    const [first] = people;
    return { id, duration, after, share: typeof first === "object" ? first.share : 1 };
  });
}

const startsOf = (document: PlanData) =>
  Object.fromEntries(
    forecastOf(document, { iterations: 1 }).tasks.map((task) => [task.id, task.asWritten.start]),
  );

// Hartmann (1998), Naval Research Logistics 45, 733-750: six activities, one resource of four units, activity
// list (2, 4, 1, 6, 3, 5), 13 periods; recalled, all 20 lists recomputed here.
describe("forecast(six tasks on a crew of four)", () => {
  const { document, known } = crewOfFour();
  const tasks = crewTasks(document);
  const lengths = allOrders(tasks).map((order) => lengthOf(tasks, oneByOne(tasks, order, 4)));

  it("recomputes the published example: 13 periods, and 13 to 16 over all lists", () => {
    expect(lengthOf(tasks, oneByOne(tasks, ["b", "d", "a", "f", "c", "e"], 4))).toBe(13);
    expect([lengths.length, Math.min(...lengths), Math.max(...lengths)]).toEqual([20, 13, 16]);
    expect([known.shortest, known.longest]).toEqual([13, 16]);
  });

  it("places the tasks as published when priorities give the list", () => {
    expect(startsOf(document)).toEqual(known.starts);
    expect(startsOf(document)).toEqual(
      Object.fromEntries(oneByOne(tasks, ["b", "d", "a", "f", "c", "e"], 4)),
    );
    expect(forecastOf(document, { iterations: 1 }).asWritten.day).toBe(13);
  });

  it("places them longest tail first without priorities: b, a, d, f, c, e", () => {
    // Tails: b 10, a and d 6 (the id decides), f 4, c 3, e 1.
    const own = crewOfFour(false);
    expect(startsOf(own.document)).toEqual(
      Object.fromEntries(oneByOne(tasks, ["b", "a", "d", "f", "c", "e"], 4)),
    );
    expect(forecastOf(own.document, { iterations: 1 }).asWritten.day).toBe(own.known.finish);
  });

  it("takes 10 days when people are without limit, and says what the limit costs", () => {
    const free = forecastOf({ ...document, respectCapacity: false }, { iterations: 1 });
    expect(free.asWritten.day).toBe(known.unlimited);
    expect(forecastOf(document, { iterations: 8 }).people?.workingDays).toBe(13 - 10);
  });
});

// Graham (1969), SIAM Journal on Applied Mathematics 17(2), 416-429: nine tasks, three processors, 12; every
// task one shorter, 13; recalled.
describe("Graham's nine tasks on a team of three", () => {
  const list = ["t1", "t2", "t3", "t4", "t5", "t6", "t7", "t8", "t9"];

  it.each([false, true])(
    "shorter %s: his scheduler gives the published length, ours that of one-by-one placing",
    (shorter) => {
      const { document, known } = grahamNine(shorter);
      const tasks = crewTasks(document);
      expect(lengthOf(tasks, takingTurns(tasks, list, 3))).toBe(known.takingTurns);
      expect(lengthOf(tasks, oneByOne(tasks, list, 3))).toBe(known.oneByOne);
      expect(startsOf(document)).toEqual(Object.fromEntries(oneByOne(tasks, list, 3)));
    },
  );

  // Tasks alike (t2 and t3; t5 to t8) need not change places: 756 orders stand for all 36,288.
  it("shows no anomaly placed one by one, in any order", () => {
    const [long, short] = [crewTasks(grahamNine(false).document), crewTasks(grahamNine(true).document)];
    const alike: Record<string, string> = { t3: "t2", t6: "t5", t7: "t6", t8: "t7" };
    const orders = allOrders(
      long.map((task) => {
        const earlier = alike[task.id];
        return earlier === undefined ? task : { ...task, after: [...task.after, earlier] };
      }),
    );
    const later = orders.filter(
      (order) => lengthOf(short, oneByOne(short, order, 3)) > lengthOf(long, oneByOne(long, order, 3)),
    );
    expect([orders.length, later]).toEqual([756, []]);
  });

  it("is 12 and, with every task a day shorter, 13 under his scheduler", () => {
    expect([grahamNine(false).known.takingTurns, grahamNine(true).known.takingTurns]).toEqual([12, 13]);
  });
});

// The same anomaly (Graham 1966, 1969) where tasks are placed one by one: own instance, recomputed here.
describe("forecast(five tasks on a team of two)", () => {
  const order = ["a", "b", "c", "d", "e"];

  it("finishes on day 12, and on day 14 with every task a day shorter", () => {
    for (const [durations, days] of [
      ["standing", 12],
      ["shorter", 14],
    ] as const) {
      const { document } = timingAnomaly(durations);
      const tasks = crewTasks(document);
      expect(lengthOf(tasks, oneByOne(tasks, order, 2))).toBe(days);
      expect(startsOf(document)).toEqual(Object.fromEntries(oneByOne(tasks, order, 2)));
      expect(forecastOf(document, { iterations: 1 }).asWritten.day).toBe(days);
    }
  });

  it("finishes earlier with shorter tasks when people are without limit", () => {
    const { known } = timingAnomaly();
    const free = (durations: "standing" | "shorter") =>
      forecastOf({ ...timingAnomaly(durations).document, respectCapacity: false }, { iterations: 1 })
        .asWritten.day;
    expect([free("standing"), free("shorter")]).toEqual([known.unlimited, known.unlimitedShorter]);
  });

  it("holds both in one forecast: the futures in which all goes faster are the late ones", () => {
    const { document } = timingAnomaly("either");
    const result = forecastOf(document);
    expect(result.asWritten.day).toBe(12);
    expect([finishAt(result, 0.2), finishAt(result, 0.8)]).toEqual([12, 14]);
    expectShare(result.finish.asWrittenChance, 0.5);
    const { model, trials } = trialsOf(document);
    const a = model.tasks.findIndex((task) => task.id === "a");
    const odd = [...trials.finish].filter(
      (finish, k) => (trials.finishes[a]?.[k] === 3 ? 14 : 12) !== finish,
    );
    expect(odd).toEqual([]);
  });
});
