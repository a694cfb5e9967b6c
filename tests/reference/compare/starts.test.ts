import { describe, expect, it } from "vitest";
import { type Comparison, compare, planFromData } from "../../../packages/core/src/index.ts";

/** Plans that start on other dates; worked out by hand on the calendar of 2027 (1 February is a Monday). */

function compared(older: object, newer: object): Comparison {
  const plan = (keys: object) => {
    const read = planFromData({
      format: 1,
      title: "Started",
      tasks: { id: "dig", name: "Dig", duration: 10 },
      iterations: 10,
      ...keys,
    });
    if (read.plan === undefined) throw new Error(JSON.stringify(read.problems));
    return read.plan;
  };
  const { comparison, problems } = compare(plan(older), plan(newer));
  if (comparison === undefined) throw new Error(JSON.stringify(problems));
  return comparison;
}

describe("compare() of plans that start on different dates", () => {
  it("counts days from the new start: a week later is five working days later", () => {
    const { from, to, moves } = compared({ start: "2027-02-01" }, { start: "2027-02-08" });
    // Ten working days from Monday 1 February end on Friday 12th: the fifth day of the new plan's first week.
    expect(from).toMatchObject({ date: "2027-02-12", day: 5, workingDays: 5 });
    expect(to).toMatchObject({ date: "2027-02-19", day: 12, workingDays: 10 });
    expect(moves).toMatchObject([{ kind: "calendar", workingDays: 5, money: 0 }]);
    expect(moves[0]?.what).toBe("Start of the plan: from Mon 1 Feb 2027 to Mon 8 Feb 2027");
  });

  it("counts working days before the new start as negative", () => {
    const { from, to, difference } = compared({ start: "2027-02-01" }, { start: "2027-03-01" });
    // The old plan ends on 12 February, ten working days (15th to 26th) before 1 March.
    expect(from).toMatchObject({ date: "2027-02-12", day: -16, workingDays: -10 });
    expect(to).toMatchObject({ date: "2027-03-12", workingDays: 10 });
    expect(difference.workingDays).toBe(20);
  });

  it("counts an earlier start the same way, on the new plan's calendar", () => {
    const { from, to } = compared({ start: "2027-02-08" }, { start: "2027-02-01", calendar: "every-day" });
    expect(from).toMatchObject({ date: "2027-02-19", day: 19, workingDays: 19 });
    expect(to).toMatchObject({ date: "2027-02-10", day: 10, workingDays: 10 });
  });

  it("leaves the old plan's seed and iterations aside, and says so", () => {
    const { warnings, stamp } = compared(
      { start: "2027-02-01", seed: "other", iterations: 50, commitment: { confidence: 0.9 } },
      { start: "2027-02-01" },
    );
    expect(stamp).toMatchObject({ seed: "leeway", iterations: 10 });
    expect(warnings).toEqual([
      "The old plan's seed other is left aside: both plans run with leeway.",
      "The old plan's 50 iterations are left aside: both plans run with 10.",
      "The old plan is committed to at 90 %; both plans are read at 80 %.",
    ]);
  });
});
