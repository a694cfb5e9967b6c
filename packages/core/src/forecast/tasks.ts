import { isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import type { AsWritten } from "../simulate/asWritten.ts";
import { finishDay, startDay } from "../simulate/critical.ts";
import type { Model } from "../simulate/model.ts";
import type { Trials } from "../simulate/trials.ts";
import { rankSelector } from "./rankSelector.ts";
import { rankOf } from "./ranks.ts";
import { ranksPerTask } from "./taskRanks.ts";
import type { IntervalForecast, TaskForecast } from "./types.ts";

/** Start, finish, criticality and money of every task, in id order. `ranks`: of all tasks, by `taskRanks`. */
export function summariseTasks(
  model: Model,
  trials: Trials,
  asWritten: AsWritten,
  ranks: Float64Array,
): TaskForecast[] {
  const n = trials.iterations;
  const texts = new Map<number, string>();
  const dateOf = (day: number) => {
    const number = model.startDay + Math.max(0, day);
    let text = texts.get(number);
    if (text === undefined) {
      text = isoDate(number);
      texts.set(number, text);
    }
    return text;
  };
  const { sums } = trials;
  return model.tasks.map((task, j): TaskForecast => {
    const at = ranksPerTask * j;
    const starts = ranks.subarray(at, at + 3);
    const finishes = ranks.subarray(at + 3, at + ranksPerTask);
    // Work in at least one iteration: read as work; a point in all of them: read as a point.
    const point = sums.points[j] === n;
    const startText = (t: number | undefined) => dateOf(startDay(task, t ?? 0, point));
    const finishText = (t: number | undefined) => dateOf(finishDay(task, t ?? 0, point));
    const start = asWritten.block.start[j]?.[0] as number;
    const finish = asWritten.block.finish[j]?.[0] as number;
    const duration = asWritten.block.duration[j]?.[0] as number;
    const writtenPoint = duration <= tolerance;
    return {
      id: task.id,
      name: task.name,
      ...(task.phase === undefined ? {} : { phase: task.phase }),
      milestone: task.kind !== "task",
      critical: (sums.critical[j] as number) / n,
      needed: (sums.needed[j] as number) / n,
      asWritten: {
        start,
        finish,
        startDate: dateOf(startDay(task, start, writtenPoint)),
        finishDate: dateOf(finishDay(task, finish, writtenPoint)),
        needed: asWritten.block.needed[j]?.[0] !== 0,
        duration,
        cost: asWritten.money.tasks[j] as number,
      },
      start: { p10: starts[0] as number, p50: starts[1] as number, p90: starts[2] as number },
      finish: { p10: finishes[0] as number, p50: finishes[1] as number, p90: finishes[2] as number },
      startDates: { p10: startText(starts[0]), p50: startText(starts[1]), p90: startText(starts[2]) },
      finishDates: {
        p10: finishText(finishes[0]),
        p50: finishText(finishes[1]),
        p90: finishText(finishes[2]),
        committed: finishText(finishes[3]),
      },
      duration: { mean: (sums.duration[j] as number) / n },
      cost: { mean: (sums.taskMoney[j] as number) / n },
      ...(task.targetDay === undefined
        ? {}
        : { target: { date: dateOf(task.targetDay), chance: (sums.onTarget[j] as number) / n } }),
    };
  });
}

/** Calendar days between two tasks, with the chance of the asked span. */
export function summariseIntervals(model: Model, trials: Trials): IntervalForecast[] {
  const n = trials.iterations;
  const selectRanks = rankSelector(n);
  return model.intervals.map((interval, i): IntervalForecast => {
    const values = trials.intervals[i] as Float64Array;
    const [p10, p50, p90] = selectRanks(
      values,
      [0.1, 0.5, 0.9].map((p) => rankOf(p, n)),
    ) as [number, number, number];
    if (interval.atMost === undefined) return { id: interval.id, name: interval.name, p10, p50, p90 };
    let within = 0;
    for (let k = 0; k < n; k++) if ((values[k] as number) <= interval.atMost + tolerance) within++;
    return {
      id: interval.id,
      name: interval.name,
      p10,
      p50,
      p90,
      atMost: interval.atMost,
      chance: within / n,
    };
  });
}
