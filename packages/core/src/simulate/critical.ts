import { tolerance } from "../calendar/tolerance.ts";
import { nextWork } from "../calendar/workCalendar.ts";
import type { LinkRows } from "../kernel/index.ts";
import { binds } from "../kernel/twins/markLink.ts";
import type { Block } from "./block.ts";
import { markByPeople } from "./criticalPeople.ts";
import type { Model, ModelLink, ModelTask } from "./model.ts";

/**
 * The backward pass: which tasks, moved a moment later, would move the plan's finish (links and the order of
 * people's work unchanged). Ties are all marked. The marks are structural: they pass through tasks that are not
 * needed; who counts as critical is decided by the caller.
 *
 * It looks at what binds, link by link, with the limit from the right of every moment: a finish on Friday
 * evening, moved a moment later, is Monday morning; slack inside a weekend is slack. Points on a day off carry
 * two marks, see `Block`. Approximation: where a task jumps over days off because its predecessor's calendar
 * differs from its own, the jump is followed as if it were a nudge.
 *
 * `lagDays`, when given, collects what drawn lags of binding links into moving tasks added to their as-written
 * values, by task and link.
 */
export function markMoving(model: Model, block: Block, limited: boolean, lagDays?: Float64Array[]): void {
  markFinish(model, block);
  for (let again = true; again; ) {
    again = false;
    for (let o = model.order.length - 1; o >= 0; o--) {
      const j = model.order[o] as number;
      const task = model.tasks[j] as ModelTask;
      if (task.progress !== undefined) continue;
      if (!block.kernel.anySet(block.pushed[j] as Uint8Array, block.n)) continue;
      for (const link of task.links) markByLink(model, block, task, j, link);
      if (limited && task.holds.length > 0 && markByPeople(model, block, task, j, o)) again = true;
    }
  }
  if (lagDays !== undefined) collectLags(model, block, lagDays);
}

/** The plan's finish, its date, and the tasks that stand at it. */
export function markFinish(model: Model, block: Block): void {
  const { n, planFinish, planFinishDay, kernel } = block;
  if (model.finishOf >= 0) {
    for (const row of block.moves) row.fill(0, 0, n);
    for (const row of block.pushed) row.fill(0, 0, n);
    const task = model.tasks[model.finishOf] as ModelTask;
    const finish = block.finish[model.finishOf] as Float64Array;
    const duration = block.duration[model.finishOf] as Float64Array;
    for (let k = 0; k < n; k++) {
      planFinish[k] = finish[k] as number;
      const point = (duration[k] as number) <= tolerance;
      planFinishDay[k] = finishDay(task, finish[k] as number, point, block.needed[model.finishOf]?.[k] !== 0);
    }
    (block.moves[model.finishOf] as Uint8Array).fill(1, 0, n);
    (block.pushed[model.finishOf] as Uint8Array).fill(1, 0, n);
    return;
  }
  planFinish.fill(0, 0, n);
  for (let j = 0; j < model.tasks.length; j++) {
    const finish = block.finish[j] as Float64Array;
    const needed = block.needed[j];
    if (needed === undefined) {
      kernel.raiseTo(planFinish, finish, n);
      continue;
    }
    for (let k = 0; k < n; k++) {
      if (needed[k] === 1 && (finish[k] as number) > (planFinish[k] as number)) {
        planFinish[k] = finish[k] as number;
      }
    }
  }
  for (let k = 0; k < n; k++)
    planFinishDay[k] = Math.max(0, Math.ceil((planFinish[k] as number) - tolerance) - 1);
  for (let j = 0; j < model.tasks.length; j++) {
    const task = model.tasks[j] as ModelTask;
    if (task.mayBePoint || task.progress !== undefined) markFinishAny(task, j, block);
    else {
      const calendar = kernel.arena.calendar(task.calendar);
      kernel.markFinish(
        calendar,
        planFinish,
        block.finish[j] as Float64Array,
        block.moves[j] as Uint8Array,
        n,
      );
    }
  }
}

/** Marks a task that may be a point, may not be needed, or is a fact; a point may also move the finish's date. */
function markFinishAny(task: ModelTask, j: number, block: Block): void {
  const { n, planFinish, planFinishDay } = block;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const needed = block.needed[j];
  const moves = block.moves[j] as Uint8Array;
  const pushed = block.pushed[j] as Uint8Array;
  moves.fill(0, 0, n);
  pushed.fill(0, 0, n);
  const finished = task.progress?.finished === true;
  for (let k = 0; k < n; k++) {
    if (needed !== undefined && needed[k] === 0) continue;
    if ((finish[k] as number) < (planFinish[k] as number) - tolerance) {
      // Work that ends as its calendar pauses goes on, once moved, after the pause: perhaps past the finish.
      if (task.calendar.everyDay || finished) continue;
      if (nextWork(task.calendar, finish[k] as number) < (planFinish[k] as number) - tolerance) continue;
      if ((duration[k] as number) > tolerance) moves[k] = 1;
      pushed[k] = 1;
      continue;
    }
    moves[k] = 1;
    pushed[k] = 1;
    // A point may stand on a later day than work that ends at the same moment: at its own earliest date.
    if ((duration[k] as number) > tolerance) continue;
    const day = finishDay(task, finish[k] as number, true);
    if (day > (planFinishDay[k] as number)) planFinishDay[k] = day;
  }
}

/**
 * Day on which a finish at moment t falls (plan format, "Reading a moment"); a recorded finish as recorded. A
 * task not needed is a plain point, read without its `notBefore`.
 */
export function finishDay(task: ModelTask, t: number, point: boolean, needed = true): number {
  const recorded = task.progress?.finished === true;
  if (task.kind === "milestone-start" && needed && !recorded) return Math.floor(t + tolerance);
  const day = Math.ceil(t - tolerance) - 1;
  return point && !recorded ? Math.max(day, needed ? task.readingFloor : task.statusFloor) : day;
}

/** Day on which a start at moment t falls. */
export function startDay(task: ModelTask, t: number, point: boolean, needed = true): number {
  const recorded = task.progress?.finished === true;
  if (recorded ? task.kind !== "task" : point) return finishDay(task, t, true, needed);
  return Math.floor(t + tolerance);
}

function markByLink(model: Model, block: Block, task: ModelTask, j: number, link: ModelLink): void {
  const { n, kernel } = block;
  const i = link.from;
  const from = model.tasks[i] as ModelTask;
  const simple =
    link.direct &&
    link.kind === "finish-to-start" &&
    from.calendar === task.calendar &&
    !from.mayBePoint &&
    !task.mayBePoint &&
    block.wait[j] === undefined;
  if (!simple) {
    kernel.markLink(rowsOfLink(model, block, task, j, link), n);
    return;
  }
  kernel.markSimple(
    kernel.arena.calendar(task.calendar),
    block.moves[i] as Uint8Array,
    block.pushed[j] as Uint8Array,
    block.finish[i] as Float64Array,
    block.start[j] as Float64Array,
    n,
  );
}

function rowsOfLink(model: Model, block: Block, task: ModelTask, j: number, link: ModelLink): LinkRows {
  const { arena } = block.kernel;
  const i = link.from;
  const wait = block.wait[j];
  const calendar = arena.calendar(task.calendar);
  const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
  return {
    from: (fromFinish ? block.finish[i] : block.start[i]) as Float64Array,
    fromFinish,
    fromDuration: block.duration[i] as Float64Array,
    fromCalendar: arena.calendar((model.tasks[i] as ModelTask).calendar),
    fromMoves: block.moves[i] as Uint8Array,
    fromPushed: block.pushed[i] as Uint8Array,
    lags: link.lag.slot < 0 ? undefined : (block.draws[link.lag.slot] as Float64Array),
    lag: link.lag.value,
    scale: link.lagScale,
    lagCalendar: arena.calendar(link.lagCalendar),
    toFinish: link.kind === "finish-to-finish" || link.kind === "start-to-finish",
    calendar,
    own: wait === undefined ? calendar : arena.calendar(task.ownCalendar),
    wait,
    needed: block.needed[j],
    start: block.start[j] as Float64Array,
    duration: block.duration[j] as Float64Array,
    startsWork: task.kind === "milestone-start",
    moves: block.moves[j] as Uint8Array,
    pushed: block.pushed[j] as Uint8Array,
  };
}

function collectLags(model: Model, block: Block, lagDays: Float64Array[]): void {
  model.tasks.forEach((task, j) => {
    if (task.progress !== undefined) return;
    const moving = block.pushed[j] as Uint8Array;
    task.links.forEach((link, l) => {
      if (link.lag.slot < 0) return;
      const rows = rowsOfLink(model, block, task, j, link);
      const draws = block.draws[link.lag.slot] as Float64Array;
      const into = lagDays[j] as Float64Array;
      let sum = 0;
      for (let k = 0; k < block.n; k++) {
        if (moving[k] === 1 && binds(rows, k, "push")) {
          sum += ((draws[k] as number) - link.lag.value) * link.lagScale;
        }
      }
      into[l] = (into[l] as number) + sum;
    });
  });
}
