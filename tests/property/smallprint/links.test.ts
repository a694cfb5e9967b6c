import { describe, expect, it } from "vitest";
import { dates, moments } from "./page.ts";

// Every title is a sentence of plan format 1, "Tasks", on links; expected values by hand.

const link = (task: string, kind: string, lag: unknown = 0) => ({ task, link: kind, lag });

describe("links", () => {
  const two = (kind: string, lag: unknown, b: object = {}) =>
    moments({ a: { duration: 3 }, b: { duration: 2, after: link("a", kind, lag), ...b } }).b;

  it.each([
    ["finish-to-start s >= f(pred) + L", "finish-to-start", 1, [4, 8]],
    ["start-to-start s >= s(pred) + L", "start-to-start", 1, [1, 3]],
    ["finish-to-finish f >= f(pred) + L", "finish-to-finish", 1, [2, 4]],
    ["start-to-finish f >= s(pred) + L", "start-to-finish", 4, [2, 4]],
  ])("%s", (_, kind, lag, expected) => {
    expect(two(kind, lag)).toEqual(expected);
  });

  it("a bare id is finish-to-start, no lag", () => {
    expect(moments({ a: { duration: 3 }, b: { duration: 2, after: "a" } }).b).toEqual([3, 5]);
  });

  it("a task may be named twice with different links: both hold", () => {
    const both = (ss: number, ff: number) =>
      moments({
        a: { duration: 3 },
        b: { duration: 2, after: [link("a", "start-to-start", ss), link("a", "finish-to-finish", ff)] },
      }).b;
    expect([both(0, 1), both(2, 0), both(1, 0)]).toEqual([
      [2, 4],
      [2, 4],
      [1, 3],
    ]);
  });

  it("a required finish is met when the successor's calendar holds no work between f and b", () => {
    // a ends on Saturday evening; b that ends on Friday evening has met it: its calendar holds nothing between.
    const a = { duration: 6, calendar: "every-day" };
    const after = link("a", "finish-to-finish");
    expect(moments({ a, b: { duration: 2, after } }).b).toEqual([3, 5]);
    expect(moments({ a, b: { duration: 2, after, calendar: "every-day" } }).b).toEqual([4, 6]);
    expect(dates({ a, b: { duration: 2, after } }).b).toEqual(["2027-02-04", "2027-02-05"]);
  });

  it("a required finish on days the successor cannot work: also days on which its people are away", () => {
    const people = { id: "ann", name: "Ann", away: ["2027-02-04", "2027-02-05"] };
    const b = { duration: 2, people: "ann", after: link("a", "finish-to-finish") };
    expect(moments({ a: { duration: 5 }, b }, { people }).b).toEqual([1, 3]);
    const along = { ...b, people: { id: "ann", along: true } };
    expect(moments({ a: { duration: 5 }, b: along }, { people }).b).toEqual([3, 5]);
  });

  it("the task starts at the earliest moment that meets it (it is not stretched)", () => {
    expect(two("finish-to-finish", 3)).toEqual([4, 8]);
    const c = { duration: 1, after: link("b", "start-to-start") };
    expect(
      moments({ a: { duration: 3 }, b: { duration: 2, after: link("a", "finish-to-finish", 3) }, c }).c,
    ).toEqual([4, 5]);
  });

  it("a required finish already behind the task asks for nothing", () => {
    expect(two("finish-to-finish", -2)).toEqual([0, 2]);
    expect(two("start-to-finish", 0)).toEqual([0, 2]);
    expect(two("finish-to-finish", 0, { notBefore: "2027-02-09" })).toEqual([8, 10]);
  });

  it("a finish bound of a point is taken as it stands: the latest of its bounds", () => {
    const a = { duration: 6, calendar: "every-day" };
    const m = { milestone: true, after: link("a", "finish-to-finish") };
    expect(moments({ a, m }).m).toEqual([6, 6]);
    expect(dates({ a, m }).m).toEqual(["2027-02-06", "2027-02-06"]);
  });

  it("links carry moments, not dates: work may follow work within a day", () => {
    const tasks = { a: { duration: 0.5 }, b: { duration: 0.25, after: "a" }, c: { duration: 1, after: "b" } };
    expect(moments(tasks)).toEqual({ a: [0, 0.5], b: [0.5, 0.75], c: [0.75, 1.75] });
  });
});
