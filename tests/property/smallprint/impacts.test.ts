import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { complaints, documentOf, moments, occurred, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "The register", on impacts; expected values by hand.

const happened = (id: string, impacts: object | object[]) => ({
  id,
  name: id,
  probability: 0.5,
  status: "occurred",
  impacts,
});

describe("impacts", () => {
  it("`delay` lengthens each task by working days (its people are paid)", () => {
    const people = { people: { id: "ann", name: "Ann", rate: 100 } };
    const paid = (part: object) =>
      written(
        { a: { duration: 4, people: "ann", costPerDay: 10 } },
        { ...people, ...occurred({ tasks: "a", ...part }) },
      );
    expect(paid({ delay: 3 })).toMatchObject({ day: 9, cost: 770 });
    expect(paid({ factor: 2 })).toMatchObject({ day: 10, cost: 880 });
  });

  it("`wait` moves its link and date bounds that many working days later (nobody is paid)", () => {
    const people = { people: { id: "ann", name: "Ann", rate: 100 } };
    const late = { a: { duration: 4, people: "ann" } };
    expect(written(late, { ...people, ...occurred({ tasks: "a", wait: 3 }) })).toMatchObject({
      day: 9,
      cost: 400,
    });
    const bound = {
      a: { duration: 4 },
      b: { duration: 1, after: "a" },
      c: { duration: 1, notBefore: "2027-02-05" },
    };
    expect(moments(bound, occurred({ tasks: ["b", "c"], wait: 2 }))).toEqual({
      a: [0, 4],
      b: [8, 9],
      c: [8, 9],
    });
  });

  it("a wait is counted like a lag: absences of its people left out", () => {
    const people = { people: { id: "ann", name: "Ann", away: "2027-02-02" } };
    const tasksOf = { a: { duration: 1, people: "ann" } };
    expect(moments(tasksOf, { ...people, ...occurred({ tasks: "a", wait: 2 }) }).a).toEqual([2, 3]);
  });

  it("a wait moves a required finish as well", () => {
    const b = { duration: 1, after: { task: "a", link: "finish-to-finish" } };
    expect(moments({ a: { duration: 3 }, b }, occurred({ tasks: "b", wait: 1 })).b).toEqual([3, 4]);
  });

  it("a wait does not move the day after `statusDate`, nor what has started", () => {
    const keys = { statusDate: "2027-02-04", ...occurred({ tasks: ["a", "s"], wait: 2 }) };
    const both = { a: { duration: 1 }, s: { duration: 9, started: "2027-02-02" } };
    expect(moments(both, keys)).toEqual({ a: [4, 5], s: [1, 12] });
  });

  it("a wait is the only part a milestone may have", () => {
    expect(complaints({ m: { milestone: true } }, occurred({ tasks: "m", wait: 1 }))).toEqual([]);
    expect(complaints({ m: { milestone: true } }, occurred({ tasks: "m", delay: 1 }))).toHaveLength(1);
  });

  it("`cost` is added once, however many tasks it names", () => {
    const keys = occurred({ tasks: ["a", "b"], delay: 1, cost: 50 });
    expect(written({ a: { duration: 1 }, b: { duration: 1 } }, keys).cost).toBe(50);
  });

  it("`phase` means its tasks, milestones excluded", () => {
    const list = {
      a: { duration: 1, phase: "P" },
      b: { duration: 2, phase: "P" },
      m: { milestone: true, phase: "P" },
      z: { duration: 1 },
    };
    const keys = { phases: [{ name: "P" }], ...occurred({ phase: "P", wait: 1 }) };
    expect(moments(list, keys)).toEqual({ a: [1, 2], b: [1, 3], m: [0, 0], z: [0, 1] });
  });

  it("one draw per part shared by the tasks it names", () => {
    const list = { a: { duration: 1 }, b: { duration: 1 } };
    const { finishes } = simulated(list, {
      calendar: "every-day",
      ...occurred({ tasks: ["a", "b"], delay: [1, 3, 9] }),
    });
    expect(finishes("b")).toEqual(finishes("a"));
    expect(new Set(finishes("a")).size).toBeGreaterThan(1000);
  });

  it("a realised duration is max(0, sampled * product of factors + sum of delays)", () => {
    const keys = {
      calendar: "every-day",
      risks: [
        happened("p", { tasks: "a", factor: 2, delay: 1 }),
        happened("q", [
          { tasks: "a", factor: 1.5 },
          { tasks: "a", delay: -3 },
        ]),
      ],
    };
    // 4 * 2 * 1.5 + 1 - 3.
    expect(written({ a: { duration: 4 } }, keys).day).toBeCloseTo(10, 12);
  });

  it("negative delay or cost: an opportunity, in the drivers too", () => {
    const luck = { tasks: "a", delay: -2, cost: -40 };
    const keys = { risks: { id: "r", name: "R", probability: 0.5, impacts: luck } };
    const { drivers } = forecastOf(documentOf({ a: { duration: 5 } }, keys), { iterations: 1024 });
    const driver = drivers.find(({ id }) => id === "r");
    expect(Math.abs((driver?.days ?? 0) + 1)).toBeLessThan(0.01);
    expect(Math.abs((driver?.money ?? 0) + 20)).toBeLessThan(0.2);
  });
});
