// Rolling wave, worked by hand where there is a closed form. Sums of independent normal durations: means and variances
// add up (any textbook); half the width from one in ten to one in ten is 1.2816 standard deviations.
import { type Plan, planFromData, waveCompare } from "@leeway/core";
import { describe, expect, it } from "vitest";

const z = 1.2815515655446004;
const normal = (mean: number, sd: number) => ({
  low: mean - z * sd,
  high: mean + z * sd,
  shape: "normal",
  bounds: "p10-p90",
});
const read = (document: Record<string, unknown>): Plan => {
  const { plan, problems } = planFromData({
    format: 1,
    title: "T",
    start: "2027-01-04",
    calendar: "every-day",
    ...document,
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
};
const OUTLINE = { id: "works", name: "Works", detail: "outline", duration: normal(60, 8), after: "start" };
const START = { id: "start", name: "Start", duration: 30 };
const older = read({
  tasks: [
    START,
    OUTLINE,
    { id: "later", name: "Later", detail: "outline", duration: 5 },
    { id: "lost", name: "Lost", detail: "outline", duration: 5 },
  ],
});
const detail = (more: object = {}) => ({
  tasks: [
    START,
    { id: "a", name: "Walls", detailOf: "works", duration: normal(20, 4), after: "start" },
    { id: "b", name: "Roof", detailOf: "works", duration: normal(20, 4), after: "a" },
    { id: "c", name: "Doors", detailOf: "works", duration: normal(20, 4), after: "b" },
    { id: "later", name: "Later", detail: "outline", duration: 5 },
  ],
  ...more,
});
const options = { iterations: 4096 };

describe("waveCompare(oldPlan, newPlan)", () => {
  const { waves, gone, still, problems } = waveCompare(older, read(detail()), options);

  it("compares the outline with its detail alone, wherever both stand in their plans", () => {
    const [wave] = waves;
    expect(problems).toEqual([]);
    expect([waves.length, wave?.detail.map(({ id }) => id)]).toEqual([1, ["a", "b", "c"]]);
    // Before 60 and 8; after 60 and sqrt 3 times 4 = 6.93. Four standard errors of a percentile of 4,096 plain draws at
    // 0.1: 4 sqrt(0.09 / 4096) / 0.1755 (the normal density there) = 0.107 standard deviations.
    const near = (value: number | undefined, mean: number, sd: number) =>
      expect(Math.abs((value ?? Number.NaN) - mean)).toBeLessThan(0.107 * sd);
    near(wave?.before.workingDays.p10, 60 - z * 8, 8);
    near(wave?.before.workingDays.p90, 60 + z * 8, 8);
    const sd = 4 * Math.sqrt(3);
    near(wave?.after.workingDays.p10, 60 - z * sd, sd);
    near(wave?.after.workingDays.p50, 60, sd);
    near(wave?.after.workingDays.p90, 60 + z * sd, sd);
    expect(wave?.widthRatio).toBeCloseTo(sd / 8, 1);
  });

  it("shows the detail without the narrowing of splitting alone", () => {
    // Correlated at 0.9 in pairs: variance 3 * 16 * (1 + 2 * 0.9) = 134.4.
    const days = waves[0]?.together?.workingDays;
    const sd = Math.sqrt(134.4);
    expect(Math.abs((days?.p90 ?? 0) - (60 + z * sd))).toBeLessThan(0.107 * sd);
    expect(waves[0]?.correlated).toBe(false);
  });

  it("names outline tasks that are gone without detail, and those that are outline still", () => {
    expect([gone, still]).toEqual([[{ id: "lost", name: "Lost" }], [{ id: "later", name: "Later" }]]);
  });

  it("gives the reasons that were written down since, and only those", () => {
    const old = { date: "2027-01-05", what: "Works named" };
    const reason = { date: "2027-02-01", who: "board", what: "Works broken down", why: "Design is done" };
    const other = { date: "2027-02-02", what: "Budget raised" };
    const plan = read(
      detail({ changes: [old, reason, other], stakeholders: [{ id: "board", name: "Board" }] }),
    );
    const before: Plan = { ...older, changes: plan.changes.slice(0, 1) };
    expect(waveCompare(before, plan, options).waves[0]?.reasons.map(({ what }) => what)).toEqual([
      "Works broken down",
    ]);
  });

  it("takes `was` for detail only where the old task was an outline", () => {
    const renamed = read({
      tasks: [
        { ...START, id: "begin", was: "start" },
        { ...OUTLINE, id: "build", was: "works", after: "begin" },
      ],
    });
    expect(waveCompare(older, renamed, options).waves.map(({ outline }) => outline.id)).toEqual(["works"]);
  });
});
