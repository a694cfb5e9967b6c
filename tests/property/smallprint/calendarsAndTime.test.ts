import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { complaints, dates, documentOf, moments, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "Calendars and time"; expected values by hand.

describe("calendars", () => {
  it("`weekdays` (Monday to Friday) and `every-day` always exist", () => {
    expect(moments({ a: { duration: 6 }, b: { duration: 6, calendar: "every-day" } })).toEqual({
      a: [0, 8],
      b: [0, 6],
    });
  });

  it("`like` starts from that calendar; own `workdays` replace, own `holidays` add", () => {
    const calendars = {
      base: { workdays: ["mon", "tue"], holidays: "2027-02-02" },
      own: { like: "base", workdays: ["tue", "wed"], holidays: { from: "2027-02-09", to: "2027-02-09" } },
    };
    // Tuesdays and Wednesdays without the 2nd (of base) and the 9th (own): days 2, 9, 15.
    expect(moments({ a: { duration: 3 } }, { calendars, calendar: "own" }).a).toEqual([2, 16]);
  });

  it("`workdays` defaults to Monday to Friday", () => {
    expect(moments({ a: { duration: 6 } }, { calendars: { c: {} }, calendar: "c" }).a).toEqual([0, 8]);
  });

  it("`from` and `to` are inclusive", () => {
    const calendars = { c: { holidays: { from: "2027-02-02", to: "2027-02-04" } } };
    expect(moments({ a: { duration: 2 } }, { calendars, calendar: "c" }).a).toEqual([0, 5]);
  });
});

describe("time", () => {
  it("day k covers [k, k + 1); a working day holds one unit of work spread evenly over it", () => {
    const tasks = { a: { duration: 1.25 }, b: { duration: 0.5, after: "a" } };
    expect(moments(tasks)).toEqual({ a: [0, 1.25], b: [1.25, 1.75] });
  });

  it("D working days started at s finish at the least t for which the calendar holds D units in [s, t]", () => {
    expect(moments({ a: { duration: 5 }, b: { duration: 5, after: "a" } })).toEqual({
      a: [0, 5],
      b: [7, 12],
    });
  });

  it("a start on time that holds no work moves to the next moment that does", () => {
    expect(moments({ a: { duration: 1, notBefore: "2027-02-06" } }).a).toEqual([7, 8]);
    expect(moments({ a: { duration: 1 } }, { start: "2027-02-06" }).a).toEqual([2, 3]);
  });

  it("work is not split, except by its calendar's non-working days", () => {
    expect(moments({ a: { duration: 3, notBefore: "2027-02-04" } }).a).toEqual([3, 8]);
  });

  it.each([
    ["`unbroken`: it starts at the earliest moment from which it spans no non-working day", 2.5, [7, 9.5]],
    ["`unbroken`: work that ends with Friday spans none", 2, [3, 5]],
  ])("%s", (_, duration, expected) => {
    const tasks = { a: { duration, notBefore: "2027-02-04", unbroken: "weekdays" } };
    expect(moments(tasks).a).toEqual(expected);
  });

  it("`unbroken` goes by the calendar it names, not by the task's own", () => {
    const calendars = { fair: { holidays: "2027-02-02" } };
    const task = { duration: 2, calendar: "every-day", unbroken: "fair" };
    expect(moments({ a: task }, { calendars }).a).toEqual([2, 4]);
    expect(moments({ a: { ...task, notBefore: "2027-02-04", duration: 3 } }, { calendars }).a).toEqual([
      7, 10,
    ]);
  });
});

describe("reading a moment", () => {
  it("a start t is the date of day floor(t); a finish t is the date of day ceil(t) - 1", () => {
    const tasks = { a: { duration: 5 }, b: { duration: 0.5, after: "a" }, c: { duration: 1, after: "b" } };
    expect(dates(tasks)).toEqual({
      a: ["2027-02-01", "2027-02-05"],
      b: ["2027-02-08", "2027-02-08"],
      c: ["2027-02-08", "2027-02-09"],
    });
  });

  it.each([
    ["equal to a day's end", 1 + 5e-10, "2027-02-01", "2027-02-02"],
    ["and just short of it", 1 - 5e-10, "2027-02-01", "2027-02-02"],
    ["but not beyond", 1 + 5e-9, "2027-02-02", "2027-02-02"],
    ["nor before", 1 - 5e-9, "2027-02-01", "2027-02-01"],
  ])("moments that differ by at most 1e-9 are equal: %s", (_, duration, finishes, nextStarts) => {
    const got = dates({ a: { duration }, b: { duration: 1, after: "a" } });
    expect([got.a?.[1], got.b?.[0]]).toEqual([finishes, nextStarts]);
  });

  it("amounts of work that differ by at most 1e-9 are equal: a Friday filled by rounding keeps its Friday", () => {
    const tenths = Object.fromEntries(
      Array.from({ length: 10 }, (_, k) => [
        `t-${k}`,
        { duration: 0.1, after: k === 0 ? [] : `t-${k - 1}`, notBefore: "2027-02-05" },
      ]),
    );
    const got = dates({ ...tenths, next: { duration: 1, after: "t-9" } });
    expect([got["t-9"]?.[1], got.next?.[0]]).toEqual(["2027-02-05", "2027-02-08"]);
  });

  it("sums of shares that differ by at most 1e-9 are equal", () => {
    const people = { id: "ann", name: "Ann", capacity: 0.3 };
    const share = (part: number) => ({ duration: 2, people: { id: "ann", share: part } });
    expect(moments({ a: share(0.1), b: share(0.2) }, { people })).toEqual({ a: [0, 2], b: [0, 2] });
    expect(moments({ a: share(0.1), b: share(0.2001) }, { people }).b).toEqual([2, 4]);
  });
});

describe("points", () => {
  const week = { a: { duration: 5 } };

  it.each([
    ["a milestone", { milestone: true }],
    ["a task whose realised duration is 0", { duration: 0 }],
  ])("%s stands at the latest of its bounds, both moments read as a finish", (_, point) => {
    const tasks = { ...week, m: { ...point, after: "a" }, b: { duration: 1, after: "m" } };
    expect(moments(tasks)).toMatchObject({ m: [5, 5], b: [7, 8] });
    expect(dates(tasks).m).toEqual(["2027-02-05", "2027-02-05"]);
  });

  it("is not moved off a non-working day", () => {
    const tasks = {
      m: { milestone: true, notBefore: "2027-02-06" },
      z: { duration: 0, notBefore: "2027-02-07" },
    };
    expect(moments(tasks)).toEqual({ m: [5, 5], z: [6, 6] });
    expect(dates(tasks)).toEqual({ m: ["2027-02-06", "2027-02-06"], z: ["2027-02-07", "2027-02-07"] });
  });

  it("is never read earlier than its own `notBefore`, the day after `statusDate`, or `start`", () => {
    expect(dates({ m: { milestone: true } }).m).toEqual(["2027-02-01", "2027-02-01"]);
    expect(dates({ m: { milestone: true, notBefore: "2027-02-08" } }).m?.[1]).toBe("2027-02-08");
    expect(dates({ m: { milestone: true } }, { statusDate: "2027-02-03" }).m).toEqual([
      "2027-02-04",
      "2027-02-04",
    ]);
    // The predecessor's finish at the opening of that very day does not make it the day before.
    const tasks = { ...week, m: { milestone: true, after: "a", notBefore: "2027-02-06" } };
    expect(dates(tasks).m).toEqual(["2027-02-06", "2027-02-06"]);
  });

  it("needs no people: it holds none and waits for none", () => {
    const tasks = { a: { duration: 3, people: "ann" }, z: { duration: 0, people: "ann", priority: 9 } };
    expect(moments(tasks, { people: { id: "ann", name: "Ann" } })).toEqual({ a: [0, 3], z: [0, 0] });
  });

  it("`milestone: start` does move to the next moment that holds work and is read as a start", () => {
    const tasks = { ...week, m: { milestone: "start", after: "a" } };
    expect(moments(tasks).m).toEqual([7, 7]);
    expect(dates(tasks).m).toEqual(["2027-02-08", "2027-02-08"]);
  });

  it.each([
    ["start", "2027-02-05", 0],
    ["start", "2027-02-08", 1],
    [true, "2027-02-04", 0],
    [true, "2027-02-05", 1],
  ])(
    "where `finishOf` names a milestone: %s, `finishBy` %s is compared with its date",
    (kind, finishBy, chance) => {
      const tasks = { ...week, m: { milestone: kind, after: "a" }, z: { duration: 9, after: "m" } };
      const keys = { commitment: { finishOf: "m", finishBy } };
      const forecast = forecastOf(documentOf(tasks, keys), { iterations: 20 });
      expect(forecast.chance.finishBy).toBe(chance);
      expect(forecast.asWritten.finish).toBe(kind === "start" ? "2027-02-08" : "2027-02-05");
    },
  );
});

describe("lags", () => {
  const after = (lag: unknown, link = "finish-to-start") => ({ task: "a", link, lag });

  it("are working days on the calendar the successor names, absences of its people left out", () => {
    const people = { id: "ann", name: "Ann", away: "2027-02-03" };
    const tasks = { a: { duration: 1 }, b: { duration: 2, after: after(2), people: "ann" } };
    // Tuesday and Wednesday pass, though Ann is away on Wednesday.
    expect(moments(tasks, { people }).b).toEqual([3, 5]);
    const own = { a: { duration: 5 }, b: { duration: 1, after: after(2), calendar: "every-day" } };
    expect(moments(own).b).toEqual([7, 8]);
  });

  it("count on the plan's calendar where the successor names none, whatever the predecessor's", () => {
    const tasks = { a: { duration: 6, calendar: "every-day" }, b: { duration: 1, after: after(1) } };
    // From Saturday evening one working day: Monday.
    expect(moments(tasks).b).toEqual([8, 9]);
  });

  it("may be negative: the mirror image of a positive one", () => {
    expect(moments({ a: { duration: 6 }, b: { duration: 1, after: after(-2) } }).b).toEqual([4, 5]);
    expect(moments({ a: { duration: 5 }, b: { duration: 1, after: after(-1.5) } }).b).toEqual([3.5, 4.5]);
  });

  it("may be `{ days: estimate, calendar: NAME }`, negative too", () => {
    const named = (days: unknown) => after({ days, calendar: "every-day" });
    expect(moments({ a: { duration: 5 }, b: { duration: 1, after: named(2) } }).b).toEqual([7, 8]);
    expect(moments({ a: { duration: 6 }, b: { duration: 1, after: named(-3) } }).b).toEqual([7, 8]);
    expect(moments({ a: { duration: 6 }, b: { duration: 1, after: named(-4) } }).b).toEqual([4, 5]);
    const drawn = simulated({ a: { duration: 5 }, b: { duration: 1, after: named([2, 3, 6]) } }).starts("b");
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(7);
    expect(Math.max(...drawn)).toBeLessThan(11);
  });

  it("no bound is earlier than `start`", () => {
    expect(moments({ a: { duration: 1 }, b: { duration: 1, after: after(-9) } }).b).toEqual([0, 1]);
    expect(moments({ a: { duration: 1 }, b: { milestone: true, after: after(-9) } }).b).toEqual([0, 0]);
    expect(moments({ a: { duration: 1, notBefore: "2026-12-01" } }).a).toEqual([0, 1]);
  });
});

const everyDay = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

describe("no working day within 366 days, or a moment past day 36,525, is an error that names the task", () => {
  it.each([
    ["a gap of 400 days", { odd: { duration: 9 } }, { holidays: { from: "2027-02-03", to: "2028-03-09" } }],
    [
      "a gap of 367 days",
      { odd: { duration: 3, calendar: "d" } },
      { holidays: { from: "2027-02-03", to: "2028-02-04" } },
    ],
    ["too long a task", { odd: { duration: 40_000, calendar: "every-day" } }, {}],
    ["too long a chain", { b: { duration: 20_000 }, odd: { duration: 20_000, after: "b" } }, {}],
  ])("%s", (_, tasks, calendar) => {
    const found = complaints(tasks, {
      calendars: { c: calendar, d: { like: "c", workdays: everyDay } },
      calendar: "c",
    });
    expect(found).toHaveLength(1);
    expect(found[0]).toContain("odd");
  });

  it("a gap of 366 days is none: work goes on after it", () => {
    // Days 2 to 367 are free; day 368 is 2028-02-04, a Friday.
    const calendars = { c: { holidays: { from: "2027-02-03", to: "2028-02-03" } } };
    expect(written({ a: { duration: 3 } }, { calendars, calendar: "c" })).toMatchObject({
      finish: "2028-02-04",
    });
  });
});
