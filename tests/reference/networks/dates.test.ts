/**
 * Early dates, finish and criticality of published networks, through the whole engine: document, plan,
 * forecast. Sources stand in each model and are repeated here. Arithmetic only, so the tolerance is 1e-9.
 */
import { describe, expect, it } from "vitest";
import {
  allLinks,
  arrowsSeven,
  constructionFourteen,
  type NetworkAnswer,
  type PlanData,
  productSix,
  threePathsNine,
  trainingFourteen,
  trainingLinks,
  vacuumTen,
} from "../../../packages/core/src/models/index.ts";
import { forecastOf } from "../integrated/runPlan.ts";
import { expectWithin } from "../integrated/tolerances.ts";

const expected = (build: typeof vacuumTen): [PlanData, NetworkAnswer] => {
  const model = build("expected");
  return [model.document, model.known.expected];
};
const plain = (build: typeof allLinks): [PlanData, NetworkAnswer] => {
  const model = build();
  return [model.document, model.known];
};

const networks: [string, [PlanData, NetworkAnswer]][] = [
  // Hillier & Lieberman, Introduction to Operations Research, Reliable Construction: 44 weeks, recalled.
  ["construction, 14 tasks, expected durations", expected(constructionFourteen)],
  // Anderson et al., An Introduction to Management Science, ch. 9: data read, 17 weeks recalled.
  ["vacuum cleaner, 10 tasks, expected durations", expected(vacuumTen)],
  // Winston, Operations Research, 4th ed., sec. 8.4: data read, 38 days recalled.
  ["product, 6 tasks, expected durations", expected(productSix)],
  // Stevenson, Operations Management: data and path means 20.5, 21.5, 19.5 read.
  ["three paths, 9 tasks, expected durations", expected(threePathsNine)],
  // Taylor, Introduction to Management Science, ch. 8, p. 114: the whole table read.
  ["arrows, 7 tasks", plain(arrowsSeven)],
  // Training module, critical path method: data and path lengths read.
  ["training network, 14 tasks", plain(trainingFourteen)],
  // Training module, precedence diagram: data and links read, dates computed by two programs.
  ["training network with start-to-start links", plain(trainingLinks)],
  // Own construction after GAO-16-89G, best practice 2; linear programming agrees.
  ["all four links, lags and a lead", plain(allLinks)],
];

describe.each(networks)("forecast(%s)", (_, [document, known]) => {
  const result = forecastOf(document, { iterations: 8 });

  it("has the early dates and the finish of the source", () => {
    expectWithin(result.asWritten.day, known.finish, 1e-9);
    for (const task of result.tasks) {
      const [start, finish] = known.tasks[task.id] ?? [Number.NaN, Number.NaN];
      expectWithin(task.asWritten.start, start, 1e-9);
      expectWithin(task.asWritten.finish, finish, 1e-9);
    }
    expect(result.tasks.map((task) => task.id).sort()).toEqual(Object.keys(known.tasks).sort());
  });

  it("marks exactly the tasks without float critical, in every iteration", () => {
    for (const { id, critical } of result.tasks)
      expect([id, critical]).toEqual([id, known.critical.includes(id) ? 1 : 0]);
    expect(
      Object.keys(known.tasks)
        .filter((id) => known.tasks[id]?.[2] === 0)
        .sort(),
    ).toEqual([...known.critical].sort());
  });

  // Total float is not reported; it is what a task can wait without moving the finish. A risk that has
  // occurred makes it wait that long, and half a day more.
  it.each(Object.entries(known.tasks))("%s can wait its total float and no more", (id, [, , float]) => {
    const waiting = (days: number) => ({
      ...document,
      risks: [
        {
          id: "held",
          name: "Held up",
          probability: 1,
          status: "occurred",
          impacts: [{ tasks: [id], wait: days }],
        },
      ],
    });
    expectWithin(forecastOf(waiting(float), { iterations: 1 }).asWritten.day, known.finish, 1e-9);
    expectWithin(forecastOf(waiting(float + 0.5), { iterations: 1 }).asWritten.day, known.finish + 0.5, 1e-9);
  });
});

describe("forecast(construction, 14 tasks)", () => {
  const { document, known } = constructionFourteen("pert");

  // Hillier & Lieberman: 70 weeks when everything takes longest, recalled; path A-B-C-D-G-H-M.
  it("needs 70 weeks with every duration at its highest", () => {
    const tasks = (document.tasks as { duration: number[] }[]).map((task) => ({
      ...task,
      duration: task.duration[2] ?? Number.NaN,
    }));
    const worst = forecastOf({ ...document, tasks }, { iterations: 1 });
    expectWithin(worst.asWritten.day, 70, 1e-9);
    expect(worst.tasks.filter((task) => task.critical === 1).map((task) => task.id)).toEqual([
      "a",
      "b",
      "c",
      "d",
      "g",
      "h",
      "m",
    ]);
  });

  it("says 43 weeks as written: every duration at its most likely value", () => {
    expectWithin(forecastOf(document, { iterations: 1 }).asWritten.day, known.likelyFinish, 1e-9);
  });
});
