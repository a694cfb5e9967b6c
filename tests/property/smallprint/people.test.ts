import { describe, expect, it } from "vitest";
import { complaints, moments, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "People"; expected values by hand.

const ann = (keys: object = {}) => ({ people: { id: "ann", name: "Ann", ...keys } });
const half = { id: "ann", share: 0.5 };

describe("effort", () => {
  it("duration = effort / sum of its people's shares", () => {
    const people = [
      { id: "ann", name: "Ann" },
      { id: "bob", name: "Bob", share: 0.5 },
    ];
    expect(moments({ a: { effort: 6, people: ["ann", "bob"] } }, { people }).a).toEqual([0, 4]);
    expect(moments({ a: { effort: 2, people: { id: "ann", share: 0.4 } } }, ann()).a).toEqual([0, 5]);
  });

  it("`share`: what a bare id means in a task", () => {
    expect(moments({ a: { effort: 2, people: "ann" } }, ann({ share: 0.5 })).a).toEqual([0, 4]);
    expect(moments({ a: { effort: 2, people: { id: "ann", share: 1 } } }, ann({ share: 0.5 })).a).toEqual([
      0, 2,
    ]);
  });
});

describe("absences", () => {
  it("a task works only on days that are working days of every person it names, full absences excluded", () => {
    expect(moments({ a: { duration: 4, people: "ann" } }, ann({ away: "2027-02-03" })).a).toEqual([0, 5]);
    const calendars = { short: { workdays: ["tue", "wed"] } };
    expect(
      moments({ a: { duration: 3, people: "ann" } }, { calendars, ...ann({ calendar: "short" }) }).a,
    ).toEqual([1, 9]);
  });

  it("an absence takes that part of the capacity away: work that asks more starts after it", () => {
    const keys = ann({ away: { from: "2027-02-03", to: "2027-02-03", share: 0.5 } });
    expect(moments({ a: { duration: 4, people: "ann" } }, keys).a).toEqual([3, 9]);
    expect(moments({ a: { duration: 2, people: "ann" } }, keys).a).toEqual([0, 2]);
    expect(moments({ a: { duration: 4, people: half } }, keys).a).toEqual([0, 4]);
    expect(moments({ a: { duration: 4, people: half }, b: { duration: 4, people: half } }, keys)).toEqual({
      a: [0, 4],
      b: [3, 9],
    });
  });

  it("it is a part of the capacity, not of one person: half of two leaves one, half of 0.5 a quarter", () => {
    const day = { from: "2027-02-03", to: "2027-02-03", share: 0.5 };
    const at = (capacity: number, share: number) =>
      moments({ a: { duration: 4, people: { id: "ann", share } } }, ann({ capacity, away: day })).a;
    expect([at(2, 1), at(2, 1.1), at(0.5, 0.25), at(0.5, 0.3)]).toEqual([
      [0, 4],
      [3, 9],
      [0, 4],
      [3, 9],
    ]);
  });

  it("an absence of `share: 1` is a full one, and so are two halves", () => {
    const at = (away: object[]) => moments({ a: { duration: 4, people: half } }, ann({ away })).a;
    const day = { from: "2027-02-03", to: "2027-02-03" };
    expect(at([{ ...day, share: 1 }])).toEqual([0, 5]);
    expect(
      at([
        { ...day, share: 0.5 },
        { ...day, share: 0.5 },
      ]),
    ).toEqual([0, 5]);
    expect(at([{ ...day, share: 0.49 }])).toEqual([0, 4]);
  });

  it("`along`: costs and holds a share, but its calendar and absences do not limit the task", () => {
    const keys = ann({ away: "2027-02-03", rate: 100 });
    const along = { id: "ann", share: 0.5, along: true };
    expect(written({ a: { duration: 4, people: along } }, keys)).toMatchObject({ day: 4, cost: 200 });
    const partial = ann({ away: { from: "2027-02-03", to: "2027-02-03", share: 0.5 } });
    expect(moments({ a: { duration: 4, people: { id: "ann", along: true } } }, partial).a).toEqual([0, 4]);
    // It does hold the share: nobody else gets more than what is left.
    const tasks = {
      a: { duration: 4, people: { id: "ann", along: true }, priority: 1 },
      b: { duration: 1, people: half },
    };
    expect(moments(tasks, ann()).b).toEqual([4, 5]);
  });
});

describe("capacity", () => {
  it("no moment may ask more of a person than the capacity present", () => {
    const work = { duration: 2, people: "ann" };
    expect(moments({ a: work, b: work }, ann())).toEqual({ a: [0, 2], b: [2, 4] });
    expect(moments({ a: work, b: work, c: work }, ann({ capacity: 2 }))).toEqual({
      a: [0, 2],
      b: [0, 2],
      c: [2, 4],
    });
  });

  it("0.4 is two days a week: a share of 0.4 takes all of it", () => {
    const work = { effort: 2, people: { id: "ann", share: 0.4 } };
    expect(moments({ a: work, b: work }, ann({ capacity: 0.4 }))).toEqual({ a: [0, 5], b: [7, 12] });
  });

  it("`respectCapacity: false` asks nothing of anyone's capacity, but full absences remain days off", () => {
    const work = { duration: 2, people: "ann" };
    const keys = { respectCapacity: false, ...ann({ away: "2027-02-02" }) };
    expect(moments({ a: work, b: work }, keys)).toEqual({ a: [0, 3], b: [0, 3] });
  });

  it("a task holds its shares from its start to its finish, non-working days between included", () => {
    const keys = ann({ calendar: "every-day" });
    const tasks = {
      a: { duration: 3, people: "ann", notBefore: "2027-02-04", priority: 1 },
      b: { duration: 1, people: "ann", calendar: "every-day", notBefore: "2027-02-06" },
    };
    // a works on Thursday, Friday and Monday; on Saturday Ann is free for nobody.
    expect(moments(tasks, keys)).toEqual({ a: [3, 8], b: [8, 9] });
  });

  it("each at the earliest moment from which the share is free from start to finish: gaps are filled", () => {
    const tasks = {
      long: { duration: 5, people: "ann", notBefore: "2027-02-04", priority: 9 },
      short: { duration: 3, people: "ann" },
      wide: { duration: 4, people: "ann" },
    };
    // Three days fit before Thursday; four do not and go behind.
    expect(moments(tasks, ann())).toEqual({ long: [3, 10], short: [0, 3], wide: [10, 16] });
  });

  it("a share above capacity is an error", () => {
    const found = complaints(
      { odd: { duration: 1, people: { id: "ann", share: 0.6 } } },
      ann({ capacity: 0.5 }),
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/capacity/);
  });

  it("no common working day is an error", () => {
    const calendars = { ends: { workdays: ["sat", "sun"] } };
    const found = complaints(
      { odd: { duration: 1, people: "ann" } },
      { calendars, ...ann({ calendar: "ends" }) },
    );
    expect(found.join(" ")).toContain("odd");
  });
});

describe("the order of placing", () => {
  const work = { duration: 2, people: "ann" };

  it("the highest `priority`, then the longest tail, then the id in code-point order", () => {
    expect(moments({ b: work, a: work, "a-1": work, a1: work }, ann())).toEqual({
      a: [0, 2],
      "a-1": [2, 4],
      a1: [4, 8],
      b: [8, 10],
    });
    const tasks = { a: work, b: work, c: { duration: 1, after: "b" } };
    expect(moments(tasks, ann())).toMatchObject({ b: [0, 2], a: [2, 4] });
    expect(moments({ ...tasks, a: { ...work, priority: 1 } }, ann())).toMatchObject({ a: [0, 2], b: [2, 4] });
    expect(moments({ ...tasks, b: { ...work, priority: -1 } }, ann())).toMatchObject({
      a: [0, 2],
      b: [2, 4],
    });
  });

  it("among those whose predecessors are all placed: a high priority does not overtake its own predecessor", () => {
    const tasks = { a: { ...work, priority: -5 }, b: work, c: { ...work, after: "a", priority: 9 } };
    // b (0) comes before a (-5); then c.
    expect(moments(tasks, ann())).toEqual({ b: [0, 2], a: [2, 4], c: [4, 8] });
  });

  it.each([
    ["finish-to-start d + L + tail(j)", { link: "finish-to-start", lag: 1 }, 2, 3],
    ["start-to-start L + tail(j)", { link: "start-to-start", lag: 4 }, 2, 6],
    ["finish-to-finish d + L + tail(j) - d(j)", { link: "finish-to-finish", lag: 2 }, 5, 4],
    ["start-to-finish L + tail(j) - d(j)", { link: "start-to-finish", lag: 6 }, 5, 6],
  ])("the tail: %s", (_, link, dj, tail) => {
    // x has the tail in the title (d = 2); y competes with one just shorter, just longer, or the same.
    const lead = (d: number) =>
      moments(
        { x: work, j: { duration: dj, after: { task: "x", ...link } }, y: { duration: d, people: "ann" } },
        ann(),
      ).x?.[0];
    const true_ = link.link === "finish-to-start" ? tail + dj : tail;
    expect([lead(true_ - 0.1), lead(true_), lead(true_ + 0.1)].map((start) => start === 0)).toEqual([
      true,
      true,
      false,
    ]);
  });

  it("the longest tail (rounded to 1e-6): a hundredth decides, what rounding takes away does not", () => {
    const first = (more: number) =>
      moments({ a: work, b: { ...work, duration: 2 + more } }, ann()).a?.[0] === 0;
    expect([first(0.01), first(2e-6), first(4e-7)]).toEqual([false, false, true]);
  });

  it("the tail is of as-written durations, calendars and people ignored: drawn ones do not change the order", () => {
    const tasks = { a: { duration: [1, 2, 30], people: "ann" }, b: { duration: [1, 3, 4], people: "ann" } };
    const { starts } = simulated(tasks, ann(), 200);
    expect(new Set(starts("b"))).toEqual(new Set([0]));
  });
});
