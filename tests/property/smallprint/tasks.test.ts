import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { dates, documentOf, moments, occurred, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "Tasks"; expected values by hand. 1,024 iterations under Latin
// hypercube hold one draw in each of 1,024 equal strata, so counts of a probability are exact to one iteration.

describe("a task that is not needed", () => {
  const tasks = {
    a: { duration: 2 },
    b: { duration: 9, chance: 0.4, after: { task: "a", lag: 1 }, cost: 500, people: "ann" },
    c: { duration: 1, after: "b" },
  };
  const people = { people: { id: "ann", name: "Ann", rate: 100 } };

  it("is a zero-duration point without people or cost, placed at the earliest moment its links allow (lags count)", () => {
    expect(moments(tasks, people)).toEqual({ a: [0, 2], b: [3, 3], c: [3, 4] });
    expect(written(tasks, people).cost).toBe(0);
  });

  it("`notBefore` and `holdToPlan` do not place it", () => {
    const late = { ...tasks, b: { ...tasks.b, notBefore: "2027-03-01", holdToPlan: true } };
    expect(moments(late, people).b).toEqual([3, 3]);
    // Taken as written but not in every iteration: where it is not, its planned start does not hold it.
    const held = {
      a: { duration: [1, 3, 4] },
      b: { duration: 1, chance: 0.6, after: "a", holdToPlan: true },
    };
    const { starts } = simulated(held);
    expect(starts("b").filter((start) => start < 3 - 1e-9).length).toBeGreaterThan(100);
  });

  it("does not count towards the plan's finish", () => {
    const alone = { a: { duration: 2 }, b: { duration: 1, chance: 0.4, after: { task: "a", lag: 20 } } };
    expect(written(alone)).toMatchObject({ day: 2, finish: "2027-02-02" });
  });

  it("`chance`: probability that it is needed at all; as written >= 0.5 is taken", () => {
    const alone = (chance: number) => ({ a: { duration: 2 }, b: { duration: 3, chance, after: "a" } });
    expect([0.49, 0.5].map((chance) => written(alone(chance)).day)).toEqual([2, 5]);
    const long = simulated(alone(0.25)).finish.filter((day) => day === 5).length;
    expect(Math.abs(long - 256)).toBeLessThanOrEqual(1);
    expect(forecastOf(documentOf(alone(0.25)), { iterations: 1024 }).tasks[1]?.needed).toBe(long / 1024);
  });

  it("`onlyIf`: needed only while that response is adopted", () => {
    const with_ = (adopted: boolean) =>
      written(
        { a: { duration: 2 }, b: { duration: 3, onlyIf: "x", after: "a", cost: 70 } },
        {
          risks: {
            id: "r",
            name: "R",
            probability: 0.1,
            impacts: { tasks: "a", delay: 1 },
            responses: { id: "x", action: "X", adopted },
          },
        },
      );
    expect([with_(true).day, with_(true).cost, with_(false).day, with_(false).cost]).toEqual([5, 70, 2, 0]);
  });
});

describe("the plan's finish", () => {
  const tasks = {
    a: { duration: [1, 2, 4] },
    b: { duration: 4, after: "a", cost: [50, 60, 90] },
    m: { milestone: true, notBefore: "2027-02-20" },
  };

  it("is the latest finish of any needed task", () => {
    expect(written(tasks)).toMatchObject({ day: 19, finish: "2027-02-20" });
  });

  it("with `finishOf` is that task's; later tasks still cost money", () => {
    const forecast = forecastOf(documentOf(tasks, { commitment: { finishOf: "a" } }), { iterations: 300 });
    expect(forecast.asWritten).toMatchObject({ day: 2, finish: "2027-02-02", cost: 60 });
    expect(forecast.finish.percentiles.at(-1)?.day).toBeLessThan(4);
    expect(forecast.cost.percentiles.at(0)?.value).toBeGreaterThan(50);
    expect(Object.fromEntries(forecast.tasks.map(({ id, critical }) => [id, critical]))).toEqual({
      a: 1,
      b: 0,
      m: 0,
    });
  });

  it("`finishOf` with `milestone: start` is where it begins", () => {
    const start = { ...tasks, a: { duration: 5 }, s: { milestone: "start", after: "a" } };
    expect(written(start, { commitment: { finishOf: "s" } })).toMatchObject({ day: 7, finish: "2027-02-08" });
  });

  it("working days of a moment t are what the plan's calendar holds in [0, t]", () => {
    expect(written({ a: { duration: 10, calendar: "every-day" } })).toMatchObject({
      day: 10,
      workingDays: 8,
    });
    expect(written({ a: { duration: 8 } }, { calendar: "every-day" })).toMatchObject({
      day: 8,
      workingDays: 8,
    });
    expect(written({ a: { duration: 5.5 } })).toMatchObject({ day: 7.5, workingDays: 5.5 });
  });
});

describe("`holdToPlan`", () => {
  it("never starts before its start in the plan as written", () => {
    const tasks = { a: { duration: [1, 4, 9] }, b: { duration: 1, after: "a", holdToPlan: true } };
    const { starts, finishes } = simulated(tasks);
    const ends = finishes("a");
    expect(moments(tasks).b).toEqual([4, 5]);
    starts("b").forEach((start, k) => {
      const end = ends[k] ?? Number.NaN;
      // As written a takes four days. Earlier ends wait for Friday; later ones are followed at once.
      if (end <= 4) expect(start).toBe(4);
      else expect(start).toBeCloseTo(end, 12);
    });
    expect(Math.min(...ends)).toBeLessThan(3);
  });

  it("includes progress: the plan as written is that of the status date", () => {
    const tasks = {
      a: { duration: [1, 2, 9], started: "2027-02-01", remaining: [1, 3, 5] },
      b: { duration: 1, after: "a", holdToPlan: true },
    };
    const keys = { statusDate: "2027-02-03" };
    // Three days held, three to go: Monday evening; b on Tuesday.
    expect(moments(tasks, keys).b).toEqual([8, 9]);
    expect(Math.min(...simulated(tasks, keys).starts("b"))).toBe(8);
  });
});

describe("`target`", () => {
  it("is measured, never forces dates", () => {
    const tasks = {
      a: { duration: { outcomes: outcomesOf(3, 6) }, target: "2027-02-03" },
      b: { duration: 1, after: "a" },
    };
    const forecast = forecastOf(documentOf(tasks), { iterations: 1024 });
    expect(forecast.tasks[0]?.target).toEqual({ date: "2027-02-03", chance: 0.5 });
    expect(forecast.tasks[1]?.finish.p90).toBe(9);
  });
});

describe("`intervals`", () => {
  const tasks = { a: { duration: { outcomes: outcomesOf(4, 5) } }, b: { duration: 2, after: "a" } };
  const span = (keys: object) =>
    forecastOf(documentOf(tasks, { intervals: { id: "i", name: "I", from: "a", to: "b", ...keys } }), {
      iterations: 1024,
    }).intervals[0];

  it("calendar days from one task's finish to another's start", () => {
    // Four days end on Thursday evening, b opens on Friday: 0. Five end on Friday, b opens on Monday: 2.
    expect(span({})).toEqual({ id: "i", name: "I", p10: 0, p50: 0, p90: 2 });
  });

  it.each([
    [-1, 0],
    [0, 0.5],
    [1.9, 0.5],
    [2, 1],
  ])("with the chance of `atMost`: %s", (atMost, chance) => {
    expect(span({ atMost })).toMatchObject({ atMost, chance });
  });

  it("are negative where the other starts first", () => {
    const found = forecastOf(
      documentOf(
        { a: { duration: 5 }, b: { duration: 1 } },
        { intervals: { id: "i", name: "I", from: "a", to: "b" } },
      ),
      { iterations: 10 },
    ).intervals[0];
    expect(found?.p50).toBe(-5);
  });
});

describe("a milestone", () => {
  it("may carry `cost`, and a wait moves it", () => {
    const tasks = { a: { duration: 4 }, m: { milestone: true, after: "a", cost: 80 } };
    expect(written(tasks)).toMatchObject({ day: 4, cost: 80 });
    expect(dates(tasks, occurred({ tasks: "m", wait: 1 })).m).toEqual(["2027-02-05", "2027-02-05"]);
    expect(moments(tasks, occurred({ tasks: "m", wait: 2 })).m).toEqual([8, 8]);
  });
});

function outcomesOf(a: number, b: number) {
  return [
    { value: a, chance: 0.5 },
    { value: b, chance: 0.5 },
  ];
}
