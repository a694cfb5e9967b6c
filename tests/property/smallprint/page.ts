import { forecast, planFromData } from "@leeway/core";
import { forecastOf, runOf } from "../laws/runPlan.ts";

/** Tasks by id, as a person writes them; the name is the id. */
export type Tasks = Record<string, object>;

/**
 * A small plan that starts on Monday 2027-02-01: day 0. Friday ends at moment 5, the next Monday opens at 7.
 * Every expected number of these tests is worked by hand from the sentence of plan format 1 in the title.
 */
export function documentOf(tasks: Tasks, keys: object = {}) {
  const list = Object.entries(tasks).map(([id, task]) => ({ id, name: id, ...task }));
  return { format: 1, title: "Small print", start: "2027-02-01", ...keys, tasks: list };
}

/** [start, finish] of each task in the plan as written. */
export function moments(tasks: Tasks, keys: object = {}): Record<string, [number, number]> {
  const { tasks: found } = forecastOf(documentOf(tasks, keys), { iterations: 1 });
  return Object.fromEntries(found.map(({ id, asWritten }) => [id, [asWritten.start, asWritten.finish]]));
}

/** [start date, finish date] of each task in the plan as written. */
export function dates(tasks: Tasks, keys: object = {}): Record<string, [string, string]> {
  const { tasks: found } = forecastOf(documentOf(tasks, keys), { iterations: 1 });
  return Object.fromEntries(
    found.map(({ id, asWritten }) => [id, [asWritten.startDate, asWritten.finishDate]]),
  );
}

/** The plan as written as the forecast has it: finish, day, working days, cost. */
export function written(tasks: Tasks, keys: object = {}) {
  return forecastOf(documentOf(tasks, keys), { iterations: 1 }).asWritten;
}

/** Moments of every iteration, by task. */
export function simulated(tasks: Tasks, keys: object = {}, iterations = 1024) {
  const run = runOf(documentOf(tasks, keys), { iterations });
  if (run === undefined) throw new Error("the plan runs past its calendars");
  const row = (rows: Float64Array[], id: string): number[] => {
    const found = rows[run.model.tasks.findIndex((task) => task.id === id)];
    if (found === undefined) throw new Error(`no task ${id}`);
    return [...found];
  };
  return {
    starts: (id: string) => row(run.trials.starts, id),
    finishes: (id: string) => row(run.trials.finishes, id),
    finish: [...run.trials.finish],
    finishDay: [...run.trials.finishDay],
    cost: [...run.trials.cost],
  };
}

/** Everything that is wrong with a plan: what reading it says, or what running it says. */
export function complaints(tasks: Tasks, keys: object = {}): string[] {
  const { plan, problems } = planFromData(documentOf(tasks, keys));
  const found = plan === undefined ? problems : forecast(plan, { iterations: 1 }).problems;
  return found
    .filter((problem) => problem.severity === "error")
    .map((problem) => `${problem.path} ${problem.received} ${problem.rule}`);
}

/** A certain number of weeks. */
export const weeks = (value: number) => ({ low: value, likely: value, high: value, unit: "weeks" });

/** A risk that has occurred. */
export const occurred = (impacts: object | object[], keys: object = {}) => ({
  risks: { id: "r", name: "R", probability: 0.1, status: "occurred", impacts, ...keys },
});
