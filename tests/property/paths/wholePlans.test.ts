// Paths and bounds of whole random plans against the forecast and against re-runs of edited plans. No source outside.
import { compile, drivingPaths, forecast, type Plan, planFromData, simulate, why } from "@leeway/core";
import { expect, it } from "vitest";
import { workAt } from "../../../packages/core/src/calendar/workCalendar.ts";
import { richDocument } from "../laws/richDocument.ts";

function plans(count: number, options = {}): Plan[] {
  return Array.from({ length: count }, (_, seed) => {
    const { plan } = planFromData(richDocument(seed + 1, options));
    if (plan === undefined) throw new Error(`seed ${seed + 1} is no plan`);
    return plan;
  });
}
const iterations = 1300;

it("paths share the futures among them, and tasks are as critical as the forecast says", () => {
  let compared = 0;
  for (const plan of plans(16)) {
    const { paths } = drivingPaths(plan, { iterations });
    const told = forecast(plan, { iterations }).forecast;
    if (paths === undefined || told === undefined) continue;
    const sum = paths.paths.reduce((total, { share }) => total + share, 0);
    expect(sum).toBeLessThanOrEqual(1 + 1e-12);
    if (paths.different <= 5) expect(sum).toBeCloseTo(1, 12);
    for (const { tasks, ways, names, share } of paths.paths) {
      expect([ways.length, names.length]).toEqual([tasks.length, tasks.length]);
      expect(share).toBeGreaterThan(0);
      expect(new Set(tasks).size).toBe(tasks.length);
    }
    for (const { id, criticality, significance, cruciality, slack } of paths.tasks) {
      compared++;
      expect(criticality).toBe(told.tasks.find((task) => task.id === id)?.critical);
      expect(significance).toBeGreaterThanOrEqual(0);
      expect(cruciality).toBeLessThanOrEqual(1);
      if (criticality === 1) expect(slack).toBe(0);
    }
    expect(paths.committed.date).toBe(told.committed.date);
    expect(paths.committed.day).toBe(told.committed.day);
  }
  expect(compared).toBeGreaterThan(60);
});

// A task whose lowest duration is the one written never takes longer than written exactly when it is fixed there: then
// the days at stake are the difference between two plans, each simulated whole.
it("days at stake are the difference to a plan in which the task is fixed as written", () => {
  let compared = 0;
  let atStake = 0;
  for (const original of plans(18, { progress: false, register: false })) {
    const skewed: Plan = {
      ...original,
      correlations: [],
      tasks: original.tasks.map((task) =>
        task.duration === undefined
          ? task
          : {
              ...task,
              duration: {
                kind: "range",
                low: 3,
                likely: 3,
                high: 12,
                shape: "triangular",
                bounds: "extremes",
                unit: "days",
              },
            },
      ),
    };
    const { paths } = drivingPaths(skewed, { iterations });
    if (paths === undefined) continue;
    const level = (plan: Plan) => {
      const model = compile(plan);
      const { trials } = simulate(model, { iterations });
      const rank = Math.ceil(plan.commitment.confidence * iterations - 1e-9) - 1;
      return workAt(model.planCalendar, trials?.finish.slice().sort()[rank] as number);
    };
    const now = level(skewed);
    for (const { id, daysAtStake } of paths.tasks) {
      const task = skewed.tasks.find((each) => each.id === id);
      if (daysAtStake === undefined || task?.duration === undefined || task.chance < 1) continue;
      const fixed: Plan = {
        ...skewed,
        tasks: skewed.tasks.map((each) =>
          each.id === id ? { ...each, duration: { kind: "fixed", value: 3, unit: "days" } } : each,
        ),
      };
      expect(Math.abs(daysAtStake - (now - level(fixed)))).toBeLessThan(1e-9);
      compared++;
      if (daysAtStake > 0.01) atStake++;
    }
  }
  expect(compared).toBeGreaterThan(15);
  expect(atStake).toBeGreaterThan(6);
});

it("every start is held by something, as written and in every future, and nothing allows a later one", () => {
  let compared = 0;
  for (const plan of plans(10)) {
    for (const { id } of plan.tasks.slice(0, 4)) {
      const told = why(plan, id, { iterations: 600 }).why;
      if (told === undefined) continue;
      compared++;
      expect(told.bounds.filter(({ binds }) => binds).length).toBeGreaterThan(0);
      for (const { start, slack, binds, share } of told.bounds) {
        expect(start).toBeLessThanOrEqual(told.asWritten.start + 1e-9);
        expect(slack).toBeGreaterThanOrEqual(0);
        if (binds) expect(slack).toBe(0);
        expect(share).toBeLessThanOrEqual(1);
      }
      expect(told.bounds.reduce((sum, { share }) => sum + share, 0)).toBeGreaterThanOrEqual(1 - 1e-12);
      expect(told.chain.at(-1)?.task.id).toBe(id);
      const written = forecast(plan, { iterations: 600 }).forecast?.tasks.find((task) => task.id === id);
      expect(told.asWritten.startDate).toBe(written?.asWritten.startDate);
      expect(told.futures.startDates).toEqual(written?.startDates);
      expect(told.futures.criticality).toBe(written?.critical);
    }
  }
  expect(compared).toBeGreaterThan(28);
});
