/**
 * The reference evaluation on small plans worked by hand from the sentences of plan format 1. Each title says
 * the rule. 2027-02-01 is a Monday: day 0; Friday ends at moment 5, the next Monday opens at 7.
 */
import { describe, expect, it } from "vitest";
import type { CalendarDocument, PersonDocument, PlanDocument, TaskDocument } from "../../oracle/document.ts";
import { evaluate, evaluateAsWritten } from "../../oracle/evaluate.ts";
import { planOf } from "../../oracle/planOf.ts";

type Tasks = Record<string, Omit<TaskDocument, "id" | "name">>;

function evaluated(tasks: Tasks, keys: Partial<PlanDocument> = {}) {
  const list = Object.entries(tasks).map(([id, task]) => ({ id, name: id, ...task }));
  return evaluateAsWritten(planOf({ format: 1, title: "", start: "2027-02-01", ...keys, tasks: list }));
}

/** [start, finish] by task. */
function moments(tasks: Tasks, keys: Partial<PlanDocument> = {}) {
  return Object.fromEntries([...evaluated(tasks, keys).tasks].map(([id, t]) => [id, [t.start, t.finish]]));
}

const ann = (keys: Partial<PersonDocument> = {}): PersonDocument => ({ id: "ann", name: "Ann", ...keys });

describe("links and calendars", () => {
  it("counts a lag in working days: two from Friday evening lead to Wednesday", () => {
    const tasks: Tasks = { a: { duration: 5 }, b: { duration: 1, after: { task: "a", lag: 2 } } };
    expect(moments(tasks).b).toEqual([9, 10]);
  });

  it("counts a lag on the calendar it names", () => {
    const lag = { days: 2, calendar: "every-day" };
    expect(moments({ a: { duration: 5 }, b: { duration: 1, after: { task: "a", lag } } }).b).toEqual([7, 8]);
  });

  it("takes a negative lag back to the latest moment that leaves so much work", () => {
    const tasks: Tasks = { a: { duration: 6 }, b: { duration: 1, after: { task: "a", lag: -2 } } };
    expect(moments(tasks).b).toEqual([4, 5]);
  });

  it("lets no bound lie before the start", () => {
    const tasks: Tasks = { a: { duration: 1 }, b: { duration: 1, after: { task: "a", lag: -9 } } };
    expect(moments(tasks).b).toEqual([0, 1]);
  });

  it("starts as late as a required finish asks, without stretching", () => {
    const after = { task: "a", link: "finish-to-finish", lag: 1 } as const;
    expect(moments({ a: { duration: 5 }, b: { duration: 2, after } }).b).toEqual([4, 8]);
  });

  it("holds a required finish to be met when only free days lie between", () => {
    const after = { task: "a", link: "finish-to-finish" } as const;
    const tasks: Tasks = { a: { duration: 6, calendar: "every-day" }, b: { duration: 2, after } };
    expect(moments(tasks)).toEqual({ a: [0, 6], b: [3, 5] });
  });

  it("reads a week as the workdays of the task's calendar", () => {
    const six: CalendarDocument = { workdays: ["mon", "tue", "wed", "thu", "fri", "sat"] };
    const duration = { low: 2, likely: 2, high: 2, unit: "weeks" } as const;
    expect(
      evaluated({ a: { duration, calendar: "six" } }, { calendars: { six } }).tasks.get("a"),
    ).toMatchObject({
      duration: 12,
      finish: 13,
      finishDate: "2027-02-13",
    });
  });

  it("skips holidays, those of the calendar it is like included", () => {
    const calendars = {
      base: { holidays: "2027-02-02" },
      own: { like: "base", holidays: { from: "2027-02-04", to: "2027-02-05" } },
    };
    expect(moments({ a: { duration: 3 } }, { calendars, calendar: "own" }).a).toEqual([0, 8]);
  });

  it("moves unbroken work past the weekend it would span", () => {
    const tasks: Tasks = { a: { duration: 3 }, b: { duration: 3, after: "a", unbroken: "weekdays" } };
    expect(moments(tasks).b).toEqual([7, 10]);
  });

  it("stands a milestone on the latest bound, days off included, and lets a start milestone move on", () => {
    const tasks: Tasks = {
      a: { duration: 6, calendar: "every-day" },
      done: { milestone: true, after: "a" },
      go: { milestone: "start", after: "a" },
    };
    const { tasks: got } = evaluated(tasks);
    expect(got.get("done")).toMatchObject({ start: 6, finish: 6, finishDate: "2027-02-06" });
    expect(got.get("go")).toMatchObject({ start: 7, startDate: "2027-02-08", finishDate: "2027-02-08" });
  });

  it("never reads a milestone before its notBefore, nor before the plan's start", () => {
    const { tasks } = evaluated({
      first: { milestone: true },
      later: { milestone: true, notBefore: "2027-02-08" },
    });
    expect(tasks.get("first")).toMatchObject({ start: 0, startDate: "2027-02-01" });
    expect(tasks.get("later")).toMatchObject({ finish: 7, finishDate: "2027-02-08" });
  });

  it("passes links on through a task that is not needed, lags counted, notBefore not", () => {
    const tasks: Tasks = {
      a: { duration: 2 },
      b: { duration: 9, chance: 0.4, after: { task: "a", lag: 1 }, notBefore: "2027-03-01", cost: 500 },
      c: { duration: 1, after: "b" },
    };
    const evaluation = evaluated(tasks);
    expect(evaluation.tasks.get("b")).toMatchObject({ start: 3, finish: 3, cost: 0, needed: false });
    expect(evaluation.tasks.get("c")).toMatchObject({ start: 3, finish: 4 });
  });
});

describe("people", () => {
  it("works on common days: a full absence is a day off for the task", () => {
    const people = ann({ away: "2027-02-03" });
    expect(moments({ a: { duration: 4, people: "ann" } }, { people }).a).toEqual([0, 5]);
  });

  it("waits for the end of a partial absence that leaves too little of the share", () => {
    const people = ann({ away: { from: "2027-02-03", to: "2027-02-03", share: 0.5 } });
    expect(moments({ a: { duration: 4, people: "ann" } }, { people }).a).toEqual([3, 9]);
    const half = { id: "ann", share: 0.5 };
    expect(moments({ a: { duration: 4, people: half } }, { people }).a).toEqual([0, 4]);
  });

  it("adds overlapping absences up to a full one", () => {
    const away = [
      { from: "2027-02-02", to: "2027-02-03", share: 0.5 },
      { from: "2027-02-03", to: "2027-02-04", share: 0.5 },
    ];
    const tasks: Tasks = { a: { duration: 4, people: { id: "ann", share: 0.5 } } };
    expect(moments(tasks, { people: ann({ away }) }).a).toEqual([0, 5]);
  });

  it("is not limited by the absence of one who goes along, but pays", () => {
    const people = ann({ away: "2027-02-03", rate: 100 });
    const tasks: Tasks = { a: { duration: 4, people: { id: "ann", share: 0.5, along: true } } };
    expect(evaluated(tasks, { people }).tasks.get("a")).toMatchObject({ finish: 4, cost: 200 });
  });

  it("does not limit one who goes along by a partial absence either", () => {
    const people = ann({ away: { from: "2027-02-03", to: "2027-02-03", share: 0.5 } });
    const tasks: Tasks = { a: { duration: 4, people: { id: "ann", along: true } } };
    expect(moments(tasks, { people }).a).toEqual([0, 4]);
  });

  it("holds a required finish to be met when only a person's absence lies between", () => {
    const after = { task: "a", link: "finish-to-finish" } as const;
    const tasks: Tasks = { a: { duration: 5 }, b: { duration: 2, people: "ann", after } };
    expect(moments(tasks, { people: ann({ away: "2027-02-05" }) }).b).toEqual([2, 4]);
  });

  it("measures a tail through links between finishes less the successor's duration", () => {
    const work = (link: "finish-to-finish" | "start-to-finish", lag: number): Tasks => ({
      x: { duration: 2, people: "ann" },
      y: { duration: 5, after: { task: "x", link, lag } },
      z: { duration: 3, people: "ann" },
    });
    // Tail of x: 2 + 0 + 5 - 5 = 2, behind z's 3; then 4 + 5 - 5 = 4, before it.
    expect(moments(work("finish-to-finish", 0), { people: ann() })).toMatchObject({ z: [0, 3], x: [3, 5] });
    expect(moments(work("start-to-finish", 4), { people: ann() })).toMatchObject({ x: [0, 2], z: [2, 5] });
  });

  it("divides effort by the sum of shares", () => {
    const people = [ann(), { id: "bob", name: "Bob", share: 0.5 }];
    expect(moments({ a: { effort: 6, people: ["ann", "bob"] } }, { people }).a).toEqual([0, 4]);
  });

  it("places the longer tail first, then the id, and priority before both", () => {
    const work: Tasks = {
      a: { duration: 2, people: "ann" },
      b: { duration: 2, people: "ann" },
      c: { duration: 1, after: "b" },
    };
    expect(moments(work, { people: ann() })).toEqual({ b: [0, 2], a: [2, 4], c: [2, 3] });
    const ranked: Tasks = { ...work, a: { duration: 2, people: "ann", priority: 1 } };
    expect(moments(ranked, { people: ann() })).toEqual({ a: [0, 2], b: [2, 4], c: [4, 5] });
  });

  it("asks nothing more of people when capacity is not respected", () => {
    const work: Tasks = { a: { duration: 2, people: "ann" }, b: { duration: 2, people: "ann" } };
    expect(moments(work, { people: ann(), respectCapacity: false })).toEqual({ a: [0, 2], b: [0, 2] });
  });

  it("fills a gap that a task placed earlier has left, and finds all but the filler critical", () => {
    const tasks: Tasks = {
      long: { duration: 5, people: "ann", notBefore: "2027-02-08", priority: 9 },
      short: { duration: 2, people: "ann" },
    };
    const { tasks: got } = evaluated(tasks, { people: ann() });
    expect([got.get("long")?.start, got.get("short")?.start]).toEqual([7, 0]);
    expect([got.get("long")?.critical, got.get("short")?.critical]).toEqual([true, false]);
  });

  it("finds the task that keeps another's person critical, ties and all", () => {
    const tasks: Tasks = {
      a: { duration: 3, people: "ann" },
      b: { duration: 3, people: "ann", after: "m" },
      m: { duration: 2 },
      n: { duration: 8, calendar: "every-day" },
    };
    // b could start after m at 2, but Ann is free at 3 only; over the weekend it ends with n at 8.
    const { tasks: got } = evaluated(tasks, { people: ann() });
    expect(got.get("b")).toMatchObject({ start: 3, finish: 8 });
    const critical = [...got].filter(([, t]) => t.critical).map(([id]) => id);
    expect(critical).toEqual(["a", "b", "n"]);
  });
});

describe("the register", () => {
  const occurred = (impacts: object, scale = 1) => ({
    risks: {
      id: "r",
      name: "R",
      probability: 0.1,
      status: "occurred" as const,
      impacts,
      responses: { id: "x", action: "X", adopted: true, scale, cost: 30 },
    },
  });

  it("multiplies factors, adds delays and scales both by adopted responses", () => {
    const impacts = [
      { tasks: "a", factor: 1.5, delay: 5 },
      { tasks: "a", cost: 100 },
    ];
    const { tasks, registerCost, responsesCost } = evaluated({ a: { duration: 10 } }, occurred(impacts, 0.6));
    expect(tasks.get("a")?.duration).toBeCloseTo(16, 12);
    expect(registerCost).toBeCloseTo(60, 12);
    expect(responsesCost).toBe(30);
  });

  it("keeps a realised duration at or above zero", () => {
    const { tasks } = evaluated({ a: { duration: 2 } }, occurred({ tasks: "a", delay: -5 }));
    expect(tasks.get("a")).toMatchObject({ duration: 0, start: 0, finish: 0 });
  });

  it("moves link and date bounds by a wait, milestones' too, and leaves the day after statusDate alone", () => {
    const tasks: Tasks = {
      a: { duration: 4 },
      b: { duration: 1, after: "a" },
      m: { milestone: true, notBefore: "2027-02-05" },
    };
    const keys = occurred({ tasks: ["b", "m"], wait: 2 });
    expect(moments(tasks, keys)).toEqual({ a: [0, 4], b: [8, 9], m: [8, 8] });
    const late = moments(
      { b: { duration: 1 } },
      { ...occurred({ tasks: "b", wait: 2 }), statusDate: "2027-02-04" },
    );
    expect(late.b).toEqual([4, 5]);
  });

  it("reaches a phase's tasks but not its milestones", () => {
    const tasks: Tasks = { a: { duration: 1, phase: "Dig" }, m: { milestone: true, phase: "Dig" } };
    const keys = { phases: { name: "Dig" }, ...occurred({ phase: "Dig", wait: 1 }) };
    expect(moments(tasks, keys)).toEqual({ a: [1, 2], m: [0, 0] });
  });
});

describe("progress and money", () => {
  it("continues a started task after the status date with what remains", () => {
    const tasks: Tasks = {
      a: { duration: 5, started: "2027-02-01", remaining: 4, spent: 900, cost: 70, costPerDay: 10 },
      b: { duration: 1 },
    };
    const { tasks: got } = evaluated(tasks, { statusDate: "2027-02-03" });
    expect(got.get("a")).toMatchObject({ start: 0, finish: 9, duration: 7 });
    // 900 spent, 4 days at 10, and four sevenths of 70.
    expect(got.get("a")?.cost).toBeCloseTo(980, 10);
    expect(got.get("b")).toMatchObject({ start: 3, finish: 4 });
  });

  it("takes the rest of its estimate where nothing says what remains, and never less than nothing", () => {
    const keys = { statusDate: "2027-02-03" };
    expect(moments({ a: { duration: 5, started: "2027-02-02" } }, keys).a).toEqual([1, 8]);
    expect(moments({ a: { duration: 1, started: "2027-02-01" } }, keys).a).toEqual([0, 3]);
  });

  it("takes a finished task's moments as facts and its money by the work between them", () => {
    const tasks: Tasks = {
      a: { duration: 9, started: "2027-02-02", finished: "2027-02-08", costPerDay: 10, people: "ann" },
      b: { duration: 1, after: "a", started: "2027-02-01", finished: "2027-02-01", spent: 5 },
    };
    const evaluation = evaluated(tasks, { statusDate: "2027-02-09", people: ann({ rate: 100 }) });
    expect(evaluation.tasks.get("a")).toMatchObject({
      start: 1,
      finish: 8,
      duration: 5,
      cost: 550,
      critical: false,
      finishDate: "2027-02-08",
    });
    expect(evaluation.tasks.get("b")).toMatchObject({ start: 0, finish: 1, cost: 5 });
  });

  it("lets a started task hold its people before any other is placed", () => {
    const tasks: Tasks = {
      a: { duration: 1, people: "ann", priority: 9 },
      b: { duration: 6, people: "ann", started: "2027-02-01" },
    };
    expect(moments(tasks, { people: ann(), statusDate: "2027-02-02" })).toEqual({ a: [8, 9], b: [0, 8] });
  });

  it("lets no draw touch a finished task's money, and no task start before its planned start", () => {
    const plan = planOf({
      format: 1,
      title: "",
      start: "2027-02-01",
      statusDate: "2027-02-01",
      tasks: [
        { id: "a", name: "A", duration: 1, started: "2027-02-01", finished: "2027-02-01", cost: [1, 2, 9] },
        { id: "b", name: "B", duration: [1, 3, 9] },
        { id: "c", name: "C", duration: 1, after: "b", holdToPlan: true },
      ],
    });
    const drawn = (days: number) => {
      const value = (key: string) => (key === "b:duration" ? days : key === "c:duration" ? 1 : 0);
      return evaluate(plan, { value, occurs: () => false, needed: () => true });
    };
    expect(drawn(2).tasks.get("a")?.cost).toBe(2);
    // As written b ends with Thursday: c starts on Friday, whether b is early or on time, and later if it is late.
    expect([1, 3, 4].map((days) => drawn(days).tasks.get("c")?.start)).toEqual([4, 4, 7]);
  });

  it("charges overheads per working day between two moments, nothing if reversed", () => {
    const tasks: Tasks = { a: { duration: 2 }, b: { duration: 4, after: "a" } };
    const overheads = [
      { id: "all", name: "All", perDay: 10 },
      { id: "part", name: "Part", perDay: 1, from: "b" },
      { id: "back", name: "Back", perDay: 1000, from: "b", to: "a" },
    ];
    const evaluation = evaluated(tasks, { overheads });
    expect(evaluation).toMatchObject({ finish: 8, workingDays: 6, overheads: 64, cost: 64 });
  });

  it("takes the finish of the task it is asked for, while later tasks still cost money", () => {
    const tasks: Tasks = { a: { duration: 2 }, b: { duration: 4, after: "a", cost: 50 } };
    const evaluation = evaluated(tasks, { commitment: { finishOf: "a" } });
    expect(evaluation).toMatchObject({ finish: 2, finishDate: "2027-02-02", cost: 50 });
    expect(evaluation.tasks.get("b")?.critical).toBe(false);
  });
});
