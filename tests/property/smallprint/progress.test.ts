import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { complaints, dates, documentOf, moments, occurred, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "Progress"; expected values by hand. Status dates are in the first
// week: Wednesday 2027-02-03 is day 2, its end moment 3.

const wednesday = { statusDate: "2027-02-03" };
const ann = { people: { id: "ann", name: "Ann", rate: 100 } };

describe("facts", () => {
  it("`started` opens its day (t = day), `finished` closes its day (t = day + 1)", () => {
    const a = { duration: 9, started: "2027-02-02", finished: "2027-02-03" };
    expect(moments({ a }, wednesday).a).toEqual([1, 3]);
    expect(dates({ a }, wednesday).a).toEqual(["2027-02-02", "2027-02-03"]);
  });

  it.each([
    ["neither lies after `statusDate`", { started: "2027-02-04" }, wednesday],
    ["neither lies after `statusDate`", { started: "2027-02-01", finished: "2027-02-04" }, wednesday],
    ["neither lies before `start`", { started: "2027-01-31" }, wednesday],
    ["`finished` needs `started`", { finished: "2027-02-02" }, wednesday],
    ["nor without a `statusDate`", { started: "2027-02-01" }, {}],
    ["nor `finished` before `started`", { started: "2027-02-02", finished: "2027-02-01" }, wednesday],
  ])("%s: an error", (_, fact, keys) => {
    expect(complaints({ odd: { duration: 2, ...fact } }, keys).length).toBeGreaterThan(0);
  });

  it("`finished` needs `started`, except on a milestone", () => {
    const m = { milestone: true, finished: "2027-02-02" };
    expect(complaints({ m }, wednesday)).toEqual([]);
    expect(moments({ m }, wednesday).m).toEqual([2, 2]);
    expect(dates({ m }, wednesday).m).toEqual(["2027-02-02", "2027-02-02"]);
  });

  it("nothing unstarted starts before the day after `statusDate`", () => {
    const tasks = { a: { duration: 1 }, m: { milestone: true }, n: { duration: 1, chance: 0.1 } };
    expect(moments(tasks, wednesday)).toEqual({ a: [3, 4], m: [3, 3], n: [3, 3] });
    expect(moments({ a: { duration: 1 } }, { statusDate: "2027-02-05" }).a).toEqual([7, 8]);
  });

  it("no draw or impact touches a finished task; its realised duration is the work its calendar holds between the two", () => {
    const a = {
      duration: [1, 5, 30],
      cost: [1, 20, 90],
      costPerDay: [1, 10, 90],
      people: "ann",
      started: "2027-02-01",
      finished: "2027-02-09",
    };
    const keys = {
      statusDate: "2027-02-10",
      people: { ...ann.people, away: "2027-02-03" },
      ...occurred({ tasks: "a", delay: [1, 3, 9], factor: 2, wait: 4 }),
    };
    const { finish, cost } = simulated({ a }, keys, 50);
    expect(new Set(finish)).toEqual(new Set([9]));
    // Seven weekdays less Ann's Wednesday: six days at 110, and 20.
    expect(new Set(cost)).toEqual(new Set([680]));
  });
});

describe("a started task", () => {
  const at = (task: object, keys: object = {}, more: object = {}) =>
    moments({ a: { duration: 5, started: "2027-02-02", ...task }, ...more }, { ...wednesday, ...keys }).a;

  it("is needed, whatever `chance` and `onlyIf`", () => {
    const keys = {
      ...wednesday,
      ...occurred({ tasks: "z", delay: 0 }, { responses: { id: "x", action: "X" } }),
    };
    const task = { duration: 5, started: "2027-02-02", chance: 0.1, onlyIf: "x" };
    const forecast = forecastOf(documentOf({ a: task, z: { duration: 1 } }, keys), { iterations: 100 });
    expect([forecast.tasks[0]?.needed, forecast.asWritten.day]).toEqual([1, 8]);
  });

  it("links, `notBefore`, `holdToPlan`, waits and capacity no longer move it", () => {
    expect(at({ notBefore: "2027-03-01", holdToPlan: true })).toEqual([1, 8]);
    expect(at({}, occurred({ tasks: "a", wait: 9 }))).toEqual([1, 8]);
    expect(at({ after: "z" }, {}, { z: { duration: 20 } })).toEqual([1, 8]);
    const both = { duration: 5, started: "2027-02-02", people: "ann" };
    expect(moments({ a: both, b: both }, { ...wednesday, ...ann })).toEqual({ a: [1, 8], b: [1, 8] });
  });

  it("out of sequence: its predecessor goes on where it is, unmoved by it", () => {
    const tasks = {
      a: { duration: 4 },
      b: { duration: 6, after: "a", started: "2027-02-01" },
      c: { duration: 1, after: ["a", "b"] },
    };
    expect(moments(tasks, wednesday)).toEqual({ a: [3, 9], b: [0, 8], c: [9, 10] });
  });

  it("holds its people before any other task is placed", () => {
    const tasks = {
      a: { duration: 1, people: "ann", priority: 9 },
      b: { duration: 6, people: "ann", started: "2027-02-01" },
    };
    expect(moments(tasks, { ...wednesday, ...ann })).toEqual({ a: [8, 9], b: [0, 8] });
  });

  it("realised: the work held from its start to the end of `statusDate` plus what remains", () => {
    // Tuesday and Wednesday are held; four days remain: Thursday to Tuesday.
    expect(at({ remaining: 4 })).toEqual([1, 9]);
    expect(at({ remaining: 0 })).toEqual([1, 3]);
    // Held is the work of its calendar: a status date on Sunday adds nothing to Friday's.
    const sunday = { statusDate: "2027-02-07" };
    expect(moments({ a: { duration: 9, started: "2027-02-04", remaining: 1 } }, sunday).a).toEqual([3, 8]);
    // And of its people: Ann was away on Tuesday.
    const away = { ...wednesday, people: { ...ann.people, away: "2027-02-02" } };
    expect(moments({ a: { duration: 5, started: "2027-02-01", people: "ann" } }, away).a).toEqual([0, 8]);
  });

  it("what remains: max(0, `remaining` * product of factors + sum of delays)", () => {
    expect(at({ remaining: 4 }, occurred({ tasks: "a", factor: 1.5, delay: 1 }))).toEqual([1, 12]);
    expect(at({ remaining: 4 }, occurred({ tasks: "a", delay: -9 }))).toEqual([1, 3]);
  });

  it("without `remaining` max(0, the realised duration it would have had - the work already held)", () => {
    expect(at({})).toEqual([1, 8]);
    expect(at({ duration: 1 })).toEqual([1, 3]);
    expect(at({}, occurred({ tasks: "a", factor: 2, delay: 1 }))).toEqual([1, 16]);
    // Drawn: never less than what is already held.
    const { finish } = simulated({ a: { duration: [0.5, 3, 9], started: "2027-02-01" } }, wednesday);
    expect(Math.min(...finish)).toBe(3);
    expect(Math.max(...finish)).toBeGreaterThan(7);
  });

  it("`remaining` in weeks is weeks of its calendar", () => {
    expect(at({ remaining: { low: 1, likely: 1, high: 1, unit: "weeks" } })).toEqual([1, 10]);
  });

  it("the plan as written includes progress", () => {
    expect(written({ a: { duration: 2, started: "2027-02-02", remaining: 6 } }, wednesday)).toMatchObject({
      day: 11,
      finish: "2027-02-11",
    });
  });
});

describe("`spent`", () => {
  const price = { duration: 5, cost: 70, costPerDay: 10, people: "ann" };
  const cost = (task: object) =>
    written({ a: { ...price, started: "2027-02-01", ...task } }, { ...wednesday, ...ann }).cost;

  it("with it, a finished task costs `spent`; without it, the ordinary sum", () => {
    expect(cost({ finished: "2027-02-03", spent: 5 })).toBe(5);
    expect(cost({ finished: "2027-02-03", spent: 0 })).toBe(0);
    // Three days at 110, and 70.
    expect(cost({ finished: "2027-02-03" })).toBe(400);
  });

  it("a started one `spent` + what remains * (`costPerDay` + people) + `cost` * what remains / realised duration", () => {
    // Three days held, four remain of seven.
    expect(cost({ remaining: 4, spent: 900 })).toBeCloseTo(900 + 4 * 110 + (70 * 4) / 7, 9);
    // Without `remaining` two of five remain.
    expect(cost({ spent: 900 })).toBeCloseTo(900 + 2 * 110 + (70 * 2) / 5, 9);
    expect(cost({ remaining: 0, spent: 900 })).toBe(900);
  });

  it("without it, a started task costs the ordinary sum of its realised duration", () => {
    expect(cost({ remaining: 4 })).toBe(70 + 7 * 110);
  });
});
