import { describe, expect, it } from "vitest";
import { differences } from "./differences.ts";
import { richDocument } from "./richDocument.ts";
import { forecastOf, runOf } from "./runPlan.ts";

/**
 * Changes of a plan that say the same thing in other words, or nothing: every iteration keeps its finish and its
 * cost, to the bit. Random plans from printed seeds, exact comparisons (laws by reasoning, no source).
 */
const list = <T>(value: T | T[] | undefined): T[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value];

function same(seed: number, before: object, after: object): boolean {
  const a = runOf(before, { iterations: 200 });
  const b = runOf(after, { iterations: 200 });
  if (a === undefined || b === undefined) return false;
  expect(differences([...b.trials.finish], [...a.trials.finish]), `seed ${seed}: finish`).toEqual([]);
  expect(differences([...b.trials.cost], [...a.trials.cost]), `seed ${seed}: cost`).toEqual([]);
  return true;
}

/** A random plan with a chain xa, xb, xc of work behind one of its tasks, on its people; and one who waits for it. */
function withChain(seed: number, afterOfC: unknown, more: object[] = []) {
  const document = richDocument(seed);
  const tasks = list(document.tasks);
  const first = tasks.find((task) => task.finished === undefined);
  const people = list(document.people)
    .slice(0, 1)
    .map(({ id }) => id);
  const work = { name: "X", people };
  const { correlations: _, ...rest } = document;
  return {
    ...rest,
    tasks: [
      ...tasks,
      { ...work, id: "xa", duration: [1, 2, 4], after: first?.id ?? [] },
      { ...work, id: "xb", duration: [1, 1, 6], after: "xa" },
      { ...work, id: "xc", duration: [1, 3, 4], after: afterOfC },
      { id: "xd", name: "X", duration: 4, after: ["xc", ...(first === undefined ? [] : [first.id])] },
      ...more,
    ],
  };
}

describe("a change without effect", () => {
  it("is a holiday period split in two", () => {
    let compared = 0;
    for (let seed = 500; seed < 525; seed++) {
      const document = richDocument(seed);
      const weeks = (days: [number, number][]) => ({
        ...document,
        calendars: {
          ...document.calendars,
          split: {
            holidays: days.map(([from, to]) => ({ from: `2027-02-${from}`, to: `2027-02-${to}` })),
          },
        },
        calendar: "split",
        start: "2027-02-01",
      });
      if (
        same(
          seed,
          weeks([[10, 24]]),
          weeks([
            [10, 16],
            [17, 24],
          ]),
        )
      )
        compared++;
      same(
        seed,
        weeks([[10, 24]]),
        weeks([
          [10, 20],
          [14, 24],
        ]),
      );
    }
    expect(compared).toBeGreaterThan(20);
  });

  it("is a link from a to c where work in b already lies between them", () => {
    let compared = 0;
    for (let seed = 530; seed < 560; seed++) {
      if (same(seed, withChain(seed, "xb"), withChain(seed, ["xb", "xa"]))) compared++;
    }
    expect(compared).toBeGreaterThan(20);
  });

  it("is a task of no duration between two others", () => {
    let compared = 0;
    for (let seed = 560; seed < 590; seed++) {
      const point = { id: "xbb", name: "Nothing", duration: 0, after: "xb" };
      if (same(seed, withChain(seed, "xb"), withChain(seed, "xbb", [point]))) compared++;
    }
    expect(compared).toBeGreaterThan(20);
  });

  it("is a calendar by another name, an absence beyond the end, a risk that cannot occur", () => {
    let compared = 0;
    for (let seed = 590; seed < 610; seed++) {
      const document = richDocument(seed);
      const after = {
        ...document,
        calendars: { ...document.calendars, twin: { like: document.calendar ?? "weekdays" } },
        calendar: "twin",
        people: [
          ...list(document.people).map((person) => ({
            ...person,
            calendar: person.calendar ?? document.calendar ?? "weekdays",
            away: [...list(person.away), "2031-01-01"],
          })),
        ],
        risks: [
          ...list(document.risks),
          {
            id: "never",
            name: "Never",
            probability: 0,
            impacts: {
              tasks: list(document.tasks)
                .filter((t) => !t.milestone)
                .map((t) => t.id),
              delay: 9,
            },
          },
        ],
      };
      if (list(document.tasks).every((task) => task.milestone)) continue;
      if (same(seed, document, after)) compared++;
    }
    expect(compared).toBeGreaterThan(14);
  });
});

describe("a finished plan", () => {
  it("has no width: its actual date and what was spent, whatever was estimated", () => {
    const done = { duration: [3, 5, 20], cost: [10, 20, 90], costPerDay: [1, 2, 9] };
    const forecast = forecastOf(
      {
        format: 1,
        title: "Over",
        start: "2027-02-01",
        statusDate: "2027-02-26",
        people: { id: "ann", name: "Ann", rate: 500 },
        tasks: [
          {
            id: "a",
            name: "A",
            ...done,
            people: "ann",
            started: "2027-02-01",
            finished: "2027-02-09",
            spent: 700,
          },
          {
            id: "b",
            name: "B",
            ...done,
            after: "a",
            started: "2027-02-08",
            finished: "2027-02-19",
            spent: 41.5,
          },
          { id: "m", name: "M", milestone: true, after: "b", finished: "2027-02-17" },
        ],
        risks: { id: "r", name: "R", probability: 0.9, impacts: { tasks: "b", delay: [1, 5, 9] } },
      },
      { iterations: 2000 },
    );
    const dates = forecast.finish.percentiles.flatMap(({ date, lowDate, highDate }) => [
      date,
      lowDate,
      highDate,
    ]);
    expect(new Set(dates)).toEqual(new Set(["2027-02-19"]));
    expect(new Set(forecast.cost.percentiles.flatMap(({ value, low, high }) => [value, low, high]))).toEqual(
      new Set([741.5]),
    );
    expect([forecast.finish.sd, forecast.cost.sd]).toEqual([0, 0]);
    expect(forecast.asWritten).toMatchObject({ finish: "2027-02-19", day: 19, cost: 741.5 });
    expect(forecast.contingency).toEqual({ workingDays: 0, calendarDays: 0, money: 0 });
    expect(forecast.tasks.map((task) => task.critical)).toEqual([0, 0, 0]);
  });
});
