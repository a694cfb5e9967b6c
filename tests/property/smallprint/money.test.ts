import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { documentOf, moments, written } from "./page.ts";

// Every title is a sentence of plan format 1, "Money"; expected values by hand.

const ann = { id: "ann", name: "Ann", rate: 100 };

describe("total", () => {
  it("tasks: cost + costPerDay * realised duration + sum over people of rate * share * realised duration", () => {
    const people = [ann, { id: "bob", name: "Bob", rate: 40, share: 0.5 }];
    const a = { effort: 6, people: ["ann", "bob"], cost: 1000, costPerDay: 7 };
    // Four days at 100 + 20 + 7.
    expect(written({ a }, { people }).cost).toBe(1508);
  });

  it("fractions of days are charged", () => {
    expect(written({ a: { duration: 1.25, costPerDay: 10 } }).cost).toBe(12.5);
  });

  it("non-working days within a task are not", () => {
    expect(written({ a: { duration: 6, costPerDay: 10 } })).toMatchObject({ day: 8, cost: 60 });
  });

  it("one who goes `along` is paid; one without a rate costs nothing", () => {
    const people = [ann, { id: "bob", name: "Bob" }];
    const a = { duration: 2, people: [{ id: "ann", along: true }, "bob"] };
    expect(written({ a }, { people }).cost).toBe(200);
  });

  it("`due` says when, not how much", () => {
    for (const due of ["start", "finish"])
      expect(written({ a: { duration: 2, cost: 30, due } }).cost).toBe(30);
  });
});

describe("an overhead", () => {
  const tasks = {
    a: { duration: 2 },
    b: { duration: 4, after: "a" },
    m: { milestone: true, notBefore: "2027-02-14" },
  };
  const overhead = (keys: object, more: object = {}) =>
    written(tasks, { overheads: { id: "o", name: "O", perDay: 10, ...keys }, ...more }).cost;

  it("per working day of the plan's calendar from the plan's start to the plan's finish by default", () => {
    // The milestone stands at the opening of Sunday the 14th, day 13: ten weekdays, or thirteen days.
    expect(overhead({})).toBe(100);
    expect(overhead({}, { calendar: "every-day" })).toBe(130);
    expect(overhead({}, { commitment: { finishOf: "a" } })).toBe(20);
  });

  it("from the start of `from` to the finish of `to`", () => {
    expect(overhead({ from: "b" })).toBe(80);
    expect(overhead({ to: "b" })).toBe(60);
    expect(overhead({ from: "b", to: "b" })).toBe(40);
  });

  it("zero if reversed", () => {
    expect(overhead({ from: "b", to: "a" })).toBe(0);
    expect(overhead({ from: "m", to: "b" })).toBe(0);
  });

  it("the plan's calendar, not that of the tasks between", () => {
    const weekend = { a: { duration: 8, calendar: "every-day" } };
    expect(written(weekend, { overheads: { id: "o", name: "O", perDay: 10, from: "a", to: "a" } }).cost).toBe(
      60,
    );
  });
});

describe("money that is not in the total", () => {
  it("lateness: reported beside the total, never inside it; the reserve and benefits neither", () => {
    const keys = {
      commitment: { finishBy: "2027-02-02", reserve: 500, budget: 100 },
      lateness: { perWeek: 700, once: 1000 },
      benefits: { id: "g", kind: "revenue", name: "G", amount: 900, per: "once" },
    };
    const forecast = forecastOf(documentOf({ a: { duration: 5, cost: 60 } }, keys), { iterations: 20 });
    expect([forecast.asWritten.cost, forecast.cost.mean]).toEqual([60, 60]);
    expect(forecast.chance).toMatchObject({ finishBy: 0, budget: 1, both: 0 });
  });

  it("money moves nothing: dates are those of the same plan without it", () => {
    const bare = { a: { duration: 3 }, b: { duration: 2, after: "a" } };
    const paid = { a: { duration: 3, cost: 1e6, costPerDay: 5 }, b: { duration: 2, after: "a", cost: 1 } };
    expect(moments(paid)).toEqual(moments(bare));
  });
});
