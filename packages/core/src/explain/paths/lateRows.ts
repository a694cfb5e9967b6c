import { tolerance } from "../../calendar/tolerance.ts";
import {
  finishMoment,
  nextWork,
  startMoment,
  type WorkCalendar,
  workAt,
} from "../../calendar/workCalendar.ts";
import type { ModelLink, ModelTask } from "../../simulate/model.ts";
import { lastWhole } from "./lastWhole.ts";
import { peopleLimits } from "./peopleLimits.ts";
import type { Placed } from "./placed.ts";

/**
 * The backward pass: by task, the latest moment to which a bound on its start could come in each iteration before the
 * plan's finish moved, links and the order of people's work unchanged. Infinite where nothing it does moves the finish.
 *
 * Each limit is a least upper bound: anything before it leaves the finish where it is. Partial absences that a later
 * task would run into are not looked at.
 *
 * @param rows  By task, of the block's length: used again from block to block.
 *
 * Cost: about 15 ns a link and iteration; with limited people also the tasks of each person squared.
 */
export function fillLateRows(placed: Placed, rows: Float64Array[]): void {
  const { model, block, position } = placed;
  const people = model.limitedPeople ? peopleLimits(placed) : undefined;
  people?.look();
  const { n } = block;
  for (const row of rows) row.fill(Number.POSITIVE_INFINITY, 0, n);
  limitByFinish(placed, rows);
  const limits: Limits = {
    start: new Float64Array(n),
    finish: new Float64Array(n),
  };
  // A task later in the order may have filled a gap ahead of this one: then what moved is gone through once more.
  // Bounded, should it creep.
  const moved = new Uint8Array(model.tasks.length).fill(1);
  for (let again = true, round = 0; again && round < 50; round++) {
    again = false;
    for (let o = model.order.length - 1; o >= 0; o--) {
      const j = model.order[o] as number;
      const task = model.tasks[j] as ModelTask;
      if (task.progress !== undefined || moved[j] === 0) continue;
      moved[j] = 0;
      fillLimits(placed, task, j, rows[j] as Float64Array, limits);
      for (const link of task.links) {
        if (limitByLink(placed, link, rows, limits)) moved[link.from] = 1;
      }
      people?.limit(j, limits.start, (i, k, moment) => {
        if (!tighten(placed, i, k, moment, true, rows[i] as Float64Array)) return;
        moved[i] = 1;
        if ((position[i] as number) > o) again = true;
      });
    }
  }
}

/** By iteration, of one task: the latest moments a bound on its start, and on its finish, may come to. */
interface Limits {
  start: Float64Array;
  finish: Float64Array;
}

function limitByFinish(placed: Placed, rows: Float64Array[]): void {
  const { model, block } = placed;
  model.tasks.forEach((_, j) => {
    if (model.finishOf >= 0 && j !== model.finishOf) return;
    for (let k = 0; k < block.n; k++) {
      if (model.finishOf < 0 && block.needed[j]?.[k] === 0) continue;
      tighten(placed, j, k, block.planFinish[k] as number, true, rows[j] as Float64Array);
    }
  });
}

/** Takes the limit of task i down to what lets its finish (or start) come at `moment` at the latest. */
function tighten(
  { model, block }: Placed,
  i: number,
  k: number,
  moment: number,
  ofFinish: boolean,
  row: Float64Array,
): boolean {
  const { calendar } = model.tasks[i] as ModelTask;
  const d = (block.duration[i] as Float64Array)[k] as number;
  let limit = moment;
  if (d > tolerance) {
    if (ofFinish) limit = startMoment(calendar, Math.max(0, workAt(calendar, moment) - d));
    // A start on a day off is one on the next that works, which would be too late.
    else if (!works(calendar, moment)) limit = finishMoment(calendar, workAt(calendar, moment));
  }
  if (!(limit < (row[k] as number) - tolerance)) return false;
  row[k] = limit;
  return true;
}

function works(calendar: WorkCalendar, moment: number): boolean {
  return nextWork(calendar, moment) <= moment + tolerance;
}

function fillLimits(
  { block }: Placed,
  task: ModelTask,
  j: number,
  late: Float64Array,
  { start, finish }: Limits,
): void {
  const { calendar, unbroken, kind } = task;
  const durations = block.duration[j] as Float64Array;
  const waits = block.wait[j];
  const needed = block.needed[j];
  for (let k = 0; k < block.n; k++) {
    const limit = late[k] as number;
    start[k] = limit;
    finish[k] = limit;
    if (limit === Number.POSITIVE_INFINITY) continue;
    const d = durations[k] as number;
    const skipped = needed?.[k] === 0;
    if (d > tolerance) {
      let w = workAt(calendar, limit);
      let reached = works(calendar, limit);
      if (unbroken !== undefined) {
        const at = (block.start[j] as Float64Array)[k] as number;
        const whole = lastWhole(calendar, unbroken, w, d, workAt(calendar, at), reached);
        if (whole < w) {
          w = whole;
          reached = true;
          late[k] = startMoment(calendar, w);
        }
      }
      start[k] = late[k] as number;
      finish[k] = reached ? startMoment(calendar, w + d) : finishMoment(calendar, w + d);
    } else if (kind === "milestone-start" && !skipped && !works(calendar, limit)) {
      start[k] = finishMoment(calendar, workAt(calendar, limit));
      finish[k] = start[k] as number;
    }
    const wait = skipped || waits === undefined ? 0 : (waits[k] as number);
    if (wait > tolerance) {
      start[k] = before(task.ownCalendar, start[k] as number, wait);
      finish[k] = before(task.ownCalendar, finish[k] as number, wait);
    }
  }
}

/** The latest moment from which `lag` working days lead to `moment` at the latest. */
function before(calendar: WorkCalendar, moment: number, lag: number): number {
  if (calendar.everyDay) return moment - lag;
  const w = workAt(calendar, moment) - lag;
  if (lag < 0 && !works(calendar, moment)) return finishMoment(calendar, w);
  return startMoment(calendar, w < 0 ? 0 : w);
}

/** Answers whether the predecessor's limit came down anywhere. */
function limitByLink(placed: Placed, link: ModelLink, rows: Float64Array[], limits: Limits): boolean {
  const { model, block } = placed;
  const i = link.from;
  if (model.tasks[i]?.progress?.finished === true) return false;
  const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
  const toFinish = link.kind === "finish-to-finish" || link.kind === "start-to-finish";
  const of = toFinish ? limits.finish : limits.start;
  const draws = link.lag.slot < 0 ? undefined : (block.draws[link.lag.slot] as Float64Array);
  const row = rows[i] as Float64Array;
  let moved = false;
  for (let k = 0; k < block.n; k++) {
    let moment = of[k] as number;
    if (moment === Number.POSITIVE_INFINITY) continue;
    if (!link.direct) {
      const lag = (draws === undefined ? link.lag.value : (draws[k] as number)) * link.lagScale;
      if (Math.abs(lag) > tolerance) moment = before(link.lagCalendar, moment, lag);
    }
    if (tighten(placed, i, k, moment, fromFinish, row)) moved = true;
  }
  return moved;
}
