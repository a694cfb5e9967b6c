import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import { startDay } from "../../simulate/critical.ts";
import type { ModelTask } from "../../simulate/model.ts";
import type { Named, StartBound } from "../types.ts";
import { type Bound, lagOf } from "./boundsOf.ts";
import type { Placed } from "./placed.ts";

/** A bound of task j in iteration k with its names, dates and slack. `binds`: its start is the task's. */
export function boundJson(placed: Placed, j: number, k: number, bound: Bound): StartBound {
  const { model, block } = placed;
  const task = model.tasks[j] as ModelTask;
  const start = (block.start[j] as Float64Array)[k] as number;
  const from = model.tasks[bound.from];
  const link = bound.kind === "link" ? task.links[bound.at] : undefined;
  const person = bound.kind === "person" || bound.kind === "away" ? model.people[bound.at] : undefined;
  const lag = link === undefined ? 0 : lagOf(placed, link, k);
  const binds = bound.start >= start - tolerance;
  // Before the plan's start there is no calendar: the days themselves.
  const before = bound.start < 0 ? bound.start : workAt(task.calendar, bound.start);
  const point = ((block.duration[j] as Float64Array)[k] as number) <= tolerance;
  const needed = block.needed[j]?.[k] !== 0;
  const day = Math.max(0, startDay(task, Math.max(0, bound.start), point, needed));
  return {
    kind: bound.kind,
    ...(from === undefined ? {} : { task: named(from) }),
    ...(link === undefined ? {} : { link: link.kind }),
    ...(Math.abs(lag) > tolerance ? { lag } : {}),
    ...(person === undefined ? {} : { person: named(person) }),
    ...(bound.wait > tolerance ? { wait: bound.wait } : {}),
    day: bound.moment,
    start: bound.start,
    startDate: isoDate(model.startDay + day),
    slack: binds ? 0 : Math.max(0, workAt(task.calendar, start) - before),
    binds,
  };
}

export function named({ id, name }: Named): Named {
  return { id, name };
}
