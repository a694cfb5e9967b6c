/**
 * The reference evaluation on networks with published or independently worked answers. Durations are days on
 * a calendar without free days, so moments are the textbook's early starts and finishes.
 */
import { describe, expect, it } from "vitest";
import type { LinkDocument, PlanDocument } from "../../oracle/document.ts";
import { evaluateAsWritten } from "../../oracle/evaluate.ts";
import { planOf } from "../../oracle/planOf.ts";

type Pred = string | LinkDocument;

function network(durations: Record<string, number>, preds: Record<string, Pred[]>): PlanDocument {
  return {
    format: 1,
    title: "Network",
    start: "2027-02-01",
    calendar: "every-day",
    tasks: Object.entries(durations).map(([id, duration]) => ({
      id,
      name: id,
      duration,
      after: preds[id] ?? [],
    })),
  };
}

/** Early start and finish by task, and the critical ones in id order. */
function answers(document: PlanDocument) {
  const { tasks, finish } = evaluateAsWritten(planOf(document));
  const dates = Object.fromEntries([...tasks].map(([id, t]) => [id, [t.start, t.finish]]));
  const critical = [...tasks].filter(([, t]) => t.critical).map(([id]) => id);
  return { dates, critical, finish };
}

const link = (task: string, kind: NonNullable<LinkDocument["link"]>, lag = 0): LinkDocument => ({
  task,
  link: kind,
  lag,
});

describe("evaluateAsWritten(network)", () => {
  // Hillier & Lieberman, Introduction to Operations Research, chapter "Project Management with PERT/CPM":
  // Reliable Construction Co., 14 activities with mean durations in weeks. Published: 44 weeks, critical
  // A-B-C-E-F-J-L-N. Recalled from memory; the early dates recomputed by two other programs, which agree.
  it("finds the 44 weeks and the critical path of the Reliable Construction case", () => {
    const means = { a: 2, b: 4, c: 10, d: 6, e: 4, f: 5, g: 7, h: 9, i: 7, j: 8, k: 4, l: 5, m: 2, n: 6 };
    const preds = {
      b: ["a"],
      c: ["b"],
      d: ["c"],
      e: ["c"],
      f: ["e"],
      g: ["d"],
      h: ["e", "g"],
      i: ["c"],
      j: ["f", "i"],
      k: ["j"],
      l: ["j"],
      m: ["h"],
      n: ["k", "l"],
    };
    const { dates, critical, finish } = answers(network(means, preds));
    expect(finish).toBe(44);
    expect(critical).toEqual(["a", "b", "c", "e", "f", "j", "l", "n"]);
    expect(dates).toEqual({
      a: [0, 2],
      b: [2, 6],
      c: [6, 16],
      d: [16, 22],
      e: [16, 20],
      f: [20, 25],
      g: [22, 29],
      h: [29, 38],
      i: [16, 23],
      j: [25, 33],
      k: [33, 37],
      l: [33, 38],
      m: [38, 40],
      n: [38, 44],
    });
  });

  // The same book's worst case: every activity at its pessimistic duration, 70 weeks. From memory.
  it("finds the published 70 weeks of its worst case", () => {
    const worst = { a: 3, b: 8, c: 18, d: 10, e: 5, f: 10, g: 11, h: 17, i: 9, j: 9, k: 4, l: 7, m: 3, n: 9 };
    const preds = {
      b: ["a"],
      c: ["b"],
      d: ["c"],
      e: ["c"],
      f: ["e"],
      g: ["d"],
      h: ["e", "g"],
      i: ["c"],
      j: ["f", "i"],
      k: ["j"],
      l: ["j"],
      m: ["h"],
      n: ["k", "l"],
    };
    const { critical, finish } = answers(network(worst, preds));
    expect(finish).toBe(70);
    expect(critical).toEqual(["a", "b", "c", "d", "g", "h", "m"]);
  });

  // Taylor, Introduction to Management Science, ch. 8 solutions manual, p. 114, read: activities on arrows,
  // named here after their events, with the published early dates and zero-slack activities.
  it("gives the early dates of Taylor's seven activities", () => {
    const durations = { e12: 7, e13: 10, e24: 6, e34: 5, e35: 4, e45: 3, e56: 2 };
    const preds = { e24: ["e12"], e34: ["e13"], e35: ["e13"], e45: ["e24", "e34"], e56: ["e35", "e45"] };
    const { dates, critical } = answers(network(durations, preds));
    expect(dates).toEqual({
      e12: [0, 7],
      e13: [0, 10],
      e24: [7, 13],
      e34: [10, 15],
      e35: [10, 14],
      e45: [15, 18],
      e56: [18, 20],
    });
    expect(critical).toEqual(["e13", "e34", "e45", "e56"]);
  });

  const module = {
    a: 2,
    b: 10,
    c: 13,
    d: 12,
    e: 12,
    f: 7,
    g: 10,
    h: 16,
    i: 6,
    j: 12,
    k: 5,
    l: 8,
    m: 5,
    n: 3,
  };

  // Project-controls training module "Network Construction - Critical Path Method", read: five path lengths,
  // the longest 41 days over A-B-F-I-K-L-N.
  it("finds the training module's 41 days", () => {
    const preds = {
      b: ["a"],
      c: ["a"],
      d: ["a"],
      e: ["b"],
      f: ["b"],
      g: ["d"],
      h: ["d"],
      i: ["f"],
      j: ["c", "g"],
      k: ["i"],
      l: ["e", "k"],
      m: ["h"],
      n: ["j", "l", "m"],
    };
    const { critical, finish } = answers(network(module, preds));
    expect(finish).toBe(41);
    expect(critical).toEqual(["a", "b", "f", "i", "k", "l", "n"]);
  });

  // The same author's "Network Construction - Precedence Diagram Method", data read; its printed dates were
  // not readable, so the early dates are computed by two other programs, which agree.
  it("finds 38 days when three links become start-to-start", () => {
    const preds = {
      b: [link("a", "start-to-start")],
      c: ["a"],
      d: ["a"],
      e: ["b"],
      f: ["b"],
      g: ["d"],
      h: ["d"],
      i: ["f"],
      j: ["c", link("g", "start-to-start")],
      k: [link("i", "start-to-start")],
      l: ["e", "i", "k"],
      m: ["h"],
      n: ["g", "j", "l", "m"],
    };
    const { dates, critical, finish } = answers(network(module, preds));
    expect(finish).toBe(38);
    expect(critical).toEqual(["a", "d", "h", "m", "n"]);
    expect(dates.j).toEqual([15, 27]);
    expect(dates.k).toEqual([17, 22]);
    expect(dates.l).toEqual([23, 31]);
  });

  // Own construction after the definitions in GAO-16-89G best practice 2 and the PMI Practice Standard for
  // Scheduling; worked by a graph pass and by linear programming, which agree.
  it("honours all four links with lags and a lead", () => {
    const durations = { s: 0, a: 10, b: 8, c: 12, d: 6, e: 9, f: 4, g: 7, z: 0 };
    const preds = {
      a: ["s"],
      b: [link("a", "start-to-start", 3)],
      c: [link("a", "finish-to-start", 2), link("b", "finish-to-finish", 4)],
      d: [link("b", "finish-to-start", -2)],
      e: [link("c", "start-to-start", 5), "d"],
      f: [link("e", "finish-to-finish", 3), link("c", "finish-to-start", 1)],
      g: [link("d", "start-to-finish", 15)],
      z: ["e", "f", "g", "c"],
    };
    const { dates, critical } = answers(network(durations, preds));
    expect(dates).toEqual({
      s: [0, 0],
      a: [0, 10],
      b: [3, 11],
      c: [12, 24],
      d: [9, 15],
      e: [17, 26],
      f: [25, 29],
      g: [17, 24],
      z: [29, 29],
    });
    expect(critical).toEqual(["a", "c", "e", "f", "s", "z"]);
  });
});

describe("evaluateAsWritten(calendar)", () => {
  const chain = (start: string, durations: number[]): PlanDocument => ({
    format: 1,
    title: "Chain",
    start,
    calendar: "uk",
    calendars: {
      uk: {
        holidays: [
          "2014-01-01",
          "2014-04-18",
          "2014-04-21",
          "2014-05-05",
          "2014-05-26",
          "2014-08-25",
          "2014-12-25",
          "2014-12-26",
        ],
      },
    },
    tasks: durations.map((duration, k) => ({
      id: `t${k}`,
      name: `t${k}`,
      duration,
      after: k === 0 ? [] : `t${k - 1}`,
    })),
  });

  // GAO-16-89G appendix IV, convention read in a digest: the first day counts as day 1, a successor starts
  // the next working day. Dates computed with numpy.busday_offset.
  it.each([
    ["2014-04-14", [3, 5, 2], ["2014-04-14/16", "2014-04-17/25", "2014-04-28/29"]],
    ["2014-05-01", [10, 1], ["2014-05-01/15", "2014-05-16/16"]],
    ["2014-12-20", [5], ["2014-12-22/30"]],
  ])("reads the dates of a chain from %s", (start, durations, expected) => {
    const { tasks } = evaluateAsWritten(planOf(chain(start, durations)));
    const dates = [...tasks.values()].map((t) => `${t.startDate}/${t.finishDate.slice(8)}`);
    expect(dates).toEqual(expected);
  });
});
