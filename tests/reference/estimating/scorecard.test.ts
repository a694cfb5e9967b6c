// The scorecard, worked by hand. Triangles between extremes have quantiles in closed form: of [0, 0, 100] one in ten lies
// below 100 (1 - sqrt 0.9) = 5.13 and above 100 (1 - sqrt 0.1) = 68.38, the median is 100 (1 - sqrt 0.5) = 29.29.
import { applyAdjustment, type Plan, planFromData, scorecard } from "@leeway/core";
import { describe, expect, it } from "vitest";

const read = (document: Record<string, unknown>): Plan => {
  const { plan, problems } = planFromData({
    format: 1,
    title: "Hall",
    start: "2027-01-04",
    calendar: "every-day",
    ...document,
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
};
const day = (n: number) => new Date(Date.UTC(2027, 0, 4 + n)).toISOString().slice(0, 10);
const finished = (id: string, days: number, more: object = {}) => ({
  id,
  name: id,
  duration: { low: 0, likely: 0, high: 100, shape: "triangular" },
  started: day(0),
  finished: day(days - 1),
  ...more,
});
const status = { statusDate: day(300) };

describe("scorecard(plan, ...past)", () => {
  it("counts what lies inside from one in ten to one in ten, below and above", () => {
    const card = scorecard(
      read({
        ...status,
        tasks: [
          finished("a", 5), // below 5.13 by less than a day
          finished("b", 6),
          finished("c", 68),
          finished("d", 69), // above 68.38 by less than a day
          finished("e", 90),
          { id: "f", name: "Open", duration: [1, 2, 3], after: "e" },
        ],
      }),
    );
    expect(card.entries.map(({ task, where, within }) => [task, where, within])).toEqual([
      ["a", "below", true],
      ["b", "inside", false],
      ["c", "inside", false],
      ["d", "above", true],
      ["e", "above", false],
    ]);
    expect(card.overall).toMatchObject({ n: 5, below: 1, above: 2, within: 2, ranges: "too-few" });
    expect(card.overall?.inside).toMatchObject({ k: 2, n: 5, share: 0.4 });
    expect(card.overall?.adjustment).toBeUndefined();
    expect(card.entries[0]?.p10).toBeCloseTo(100 * (1 - Math.sqrt(0.9)), 9);
    expect(card.entries[0]?.p90).toBeCloseTo(100 * (1 - Math.sqrt(0.1)), 9);
    expect(card.entries[0]?.p50).toBeCloseTo(100 * (1 - Math.sqrt(0.5)), 9);
  });

  it("counts working days on the task's own calendar, its people's absences left out", () => {
    // Mon 4 to Fri 15 January 2027 are ten weekdays; the person is away on two of them.
    const [entry] = scorecard(
      read({
        ...status,
        people: [{ id: "ana", name: "Ana", away: { from: "2027-01-06", to: "2027-01-07" } }],
        tasks: [finished("a", 12, { calendar: "weekdays", people: "ana" })],
      }),
    ).entries;
    expect(entry).toMatchObject({ actual: 8, unit: "working days" });
  });

  it("reads weeks and efforts in working days", () => {
    const { entries } = scorecard(
      read({
        ...status,
        people: [{ id: "ana", name: "Ana", share: 0.5 }],
        tasks: [
          finished("a", 9, { duration: { low: 1, likely: 2, high: 3, bounds: "p10-p90", unit: "weeks" } }),
          finished("b", 9, {
            duration: undefined,
            effort: { low: 2, likely: 3, high: 4, bounds: "p10-p90" },
            people: "ana",
          }),
        ],
      }),
    );
    expect(
      entries.map(({ p10, likely, p90 }) => [p10, likely, p90].map((x) => Number(x.toFixed(4)))),
    ).toEqual([
      [7, 14, 21],
      [4, 6, 8],
    ]);
  });

  it("takes what was said from the first version before the work began, and what happened from the last", () => {
    const wide = [1, 5, 100];
    const plan = read({ ...status, tasks: [finished("dig", 9, { was: "old-dig", duration: wide })] });
    const early = read({
      statusDate: day(5),
      tasks: [{ id: "old-dig", name: "Dig", duration: [2, 3, 4], estimatedBy: "ana" }],
      people: [{ id: "ana", name: "Ana" }],
    });
    const later = read({
      statusDate: day(9),
      tasks: [{ id: "dig", name: "Dig", duration: wide, started: day(0), remaining: 2 }],
    });
    const card = scorecard(plan, later, early);
    expect(card.entries).toMatchObject([{ where: "above", actual: 9, by: ["ana"], likely: 3 }]);
    expect(card.plans).toEqual([{ title: "Hall", versions: 3 }]);
  });

  it("scores people by their opinions before the work, otherwise by what they signed", () => {
    const people = [
      { id: "ana", name: "Ana" },
      { id: "ben", name: "Ben" },
    ];
    const opinion = (by: string, low: number, high: number, date: string) => ({
      by,
      low,
      likely: low,
      high,
      date,
    });
    const card = scorecard(
      read({
        ...status,
        people,
        tasks: [
          finished("a", 20, {
            estimatedBy: ["ana", "ben"],
            opinions: [
              opinion("ana", 1, 5, "2026-12-01"),
              opinion("ana", 19, 40, day(40)), // said once it was known
              opinion("ben", 5, 50, "2026-12-01"),
            ],
          }),
          finished("b", 20, { estimatedBy: "ben" }),
        ],
      }),
    );
    expect(card.people.map(({ name, score }) => [name, score.inside.k, score.n])).toEqual([
      ["Ana", 0, 1],
      ["Ben", 2, 2],
    ]);
    expect(card.overall?.n).toBe(2);
  });

  it("tells what it could not score, and marks what an event has touched", () => {
    const card = scorecard(
      read({
        ...status,
        tasks: [
          finished("a", 9),
          finished("b", 9, { duration: 5 }),
          { id: "m", name: "M", milestone: true, finished: day(9) },
        ],
        risks: [
          {
            id: "rain",
            name: "Rain",
            probability: 0.1,
            status: "occurred",
            impacts: [{ tasks: "a", delay: 2 }],
          },
        ],
      }),
    );
    expect(card.unscored).toEqual([{ task: "b", plan: "Hall", why: "no-range" }]);
    expect(card.entries[0]?.events).toEqual(["rain"]);
    expect(card.overall?.withEvents).toBe(1);
  });

  it("scores costs only where all that was spent is the cost", () => {
    const cost = { low: 100, likely: 120, high: 150, bounds: "p10-p90" };
    const card = scorecard(
      read({
        ...status,
        people: [{ id: "ana", name: "Ana", rate: 10 }],
        tasks: [
          finished("a", 9, { cost, spent: 160 }),
          finished("b", 9, { cost, spent: 160, people: "ana" }),
          finished("c", 9, { cost, spent: 120 }),
        ],
      }),
    );
    expect(card.money).toMatchObject({ n: 2, inside: { k: 1 }, above: 1 });
    expect(card.overall?.n).toBe(3);
  });

  it("suggests what would have made them right, and changes only ranges of work not begun", () => {
    // Ten estimates [10, 20, 30] (one-in-ten values of a symmetric curve: median 20). Actuals 31 ... 49 by twos: their
    // median is 40, so all doubles; then (49 / 2 - 20) / 10 = 0.45 is the largest stretch, (47 / 2 - 20) / 10 = 0.35
    // the ninth of ten; downwards (20 - 31 / 2) / 10 = 0.45 and 0.35 as well.
    const duration = { low: 10, likely: 20, high: 30, bounds: "p10-p90" };
    const tasks = Array.from({ length: 10 }, (_, k) => finished(`t${k}`, 31 + 2 * k, { duration }));
    const open = { id: "open", name: "Open", duration };
    const card = scorecard(
      read({ ...status, tasks: [...tasks, open, { id: "sure", name: "Sure", duration: 7 }] }),
    );
    const adjustment = card.overall?.adjustment;
    if (adjustment === undefined) throw new Error("nothing suggested");
    expect(adjustment.shift).toBeCloseTo(2, 6);
    expect(adjustment.highSide).toBeCloseTo(0.35, 6);
    expect(adjustment.lowSide).toBeCloseTo(0.35, 6);
    expect(card.overall?.medianRatio).toBeCloseTo(2, 9);
    expect(card.overall).toMatchObject({ ranges: "too-narrow", inside: { k: 0, n: 10 } });

    const before = read({ ...status, tasks: [...tasks, open, { id: "sure", name: "Sure", duration: 7 }] });
    const after = applyAdjustment(before, adjustment);
    expect(after.tasks.slice(0, 10)).toEqual(before.tasks.slice(0, 10));
    expect(after.tasks[11]).toEqual(before.tasks[11]);
    const adjusted = after.tasks[10]?.duration;
    if (adjusted?.kind !== "range") throw new Error("no range");
    expect(adjusted.low).toBeCloseTo(33, 4);
    expect(adjusted.likely).toBeCloseTo(40, 4);
    expect(adjusted.high).toBeCloseTo(47, 4);
  });
});
