/**
 * Own data; all 32 combinations enumerated by another program, in the spirit of Van Slyke (1963) and
 * MacCrimmon & Ryavec (1964). Criticality index with ties critical on every path: Vanhoucke, Measuring Time
 * (2010), read in part.
 */
import { describe, expect, it } from "vitest";
import { discreteFive } from "../../../packages/core/src/models/index.ts";
import { finishAt, forecastOf, trialsOf } from "../integrated/runPlan.ts";
import { expectMean, expectSd, expectShare, expectWithin } from "../integrated/tolerances.ts";

const { document, known } = discreteFive();

describe.each(["latin-hypercube", "plain"] as const)("forecast(five tasks, 32 futures), %s", (design) => {
  const result = forecastOf(document, { design });

  it("has the exact finish distribution", () => {
    const { trials } = trialsOf(document, { design });
    const days = [...trials.finish].map((finish) => Math.round(finish * 1e6) / 1e6);
    expect([...new Set(days)].sort((a, b) => a - b)).toEqual(known.finish.map(([day]) => day));
    for (const [day, chance] of known.finish) {
      expectShare(days.filter((finish) => finish === day).length / days.length, chance);
    }
  });

  it("has the exact mean and deviation, and percentiles that are possible days", () => {
    expectMean(result.finish.mean, known.mean, known.sd);
    expectSd(result.finish.sd, known.sd);
    for (const [p, day] of known.percentiles) expect(finishAt(result, p)).toBe(day);
  });

  it("has the criticality index of every task, ties included", () => {
    for (const { id, critical } of result.tasks) expectShare(critical, known.critical[id] ?? Number.NaN);
  });

  it("has every task's mean duration", () => {
    // Two-valued durations: the largest deviation is that of c, 1.47.
    for (const { id, duration } of result.tasks)
      expectMean(duration.mean, known.durations[id] ?? Number.NaN, 1.47);
  });
});

describe("forecast(five tasks at their mean durations)", () => {
  // 9.3 against a mean finish of 9.96: where paths merge, the mean of the finish is later than the finish of
  // the means.
  it("finishes on 9.3, earlier than the mean finish", () => {
    const tasks = (document.tasks as { id: string }[]).map((task) => ({
      ...task,
      duration: known.durations[task.id] ?? Number.NaN,
    }));
    expectWithin(
      forecastOf({ ...document, tasks }, { iterations: 1 }).asWritten.day,
      known.finishAtMeans,
      1e-9,
    );
  });
});
