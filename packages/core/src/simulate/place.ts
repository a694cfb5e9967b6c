import { tolerance } from "../calendar/tolerance.ts";
import { finishMoment, lastDay, workAt } from "../calendar/workCalendar.ts";
import type { AnyWork } from "../kernel/index.ts";
import type { Block } from "./block.ts";
import { keepWhole } from "./keepWhole.ts";
import type { Model, ModelLink, ModelTask } from "./model.ts";
import { type Capacity, freeFrom } from "./people.ts";

/**
 * The forward pass: start and finish of every task in every iteration of the block, in placement order, so
 * that every moment read is already final. `hold[j]`: as-written start of tasks that never start before it.
 * `capacity`: who may hold limited people, or undefined for people without limit.
 *
 * `only`: places the tasks marked 1; the moments of the others are taken as they stand.
 *
 * Returns the index of a task that runs past the calendar's end (no working day within 366 days, or a moment
 * past day 36,525), or -1.
 */
export function place(
  model: Model,
  block: Block,
  hold: Float64Array | undefined,
  capacity: Capacity | undefined,
  only?: Uint8Array,
): number {
  const { n } = block;
  for (const j of model.order) {
    const task = model.tasks[j] as ModelTask;
    if (only !== undefined && only[j] === 0) continue;
    if (task.progress !== undefined) placeFact(task, block, j);
    else {
      const links = boundByLinks(task, block);
      // Nothing unstarted starts before the day after the status date, needed or not.
      const statusFloor = (model.statusDay ?? -1) + 1;
      const held = task.holdToPlan && hold !== undefined ? (hold[j] as number) : 0;
      const floor = Math.max(statusFloor, held);
      if (links.finishBound || block.wait[j] || block.needed[j] || task.kind !== "task" || task.unbroken) {
        settleAny(task, block, j, floor, statusFloor, links.finishBound);
      } else {
        const { kernel, duration, start, finish, scratch } = block;
        const latest = kernel.settle(
          kernel.arena.calendar(task.calendar),
          scratch,
          duration[j] as Float64Array,
          start[j] as Float64Array,
          finish[j] as Float64Array,
          Math.max(floor, task.notBefore),
          n,
        );
        if (latest > lastDay) return j;
        if (capacity === undefined || task.holds.length === 0) continue;
      }
      if (capacity !== undefined && task.holds.length > 0) freeFrom(task, j, block, capacity);
    }
    if (block.kernel.largestOf(block.finish[j] as Float64Array, n) > lastDay) return j;
  }
  return -1;
}

/** Started and finished tasks stand where the facts put them; what remains of a started one runs on. */
function placeFact(task: ModelTask, block: Block, j: number): void {
  const progress = task.progress as NonNullable<ModelTask["progress"]>;
  const start = block.start[j] as Float64Array;
  const finish = block.finish[j] as Float64Array;
  start.fill(progress.start, 0, block.n);
  if (progress.finished) {
    finish.fill(progress.finish, 0, block.n);
    return;
  }
  const duration = block.duration[j] as Float64Array;
  const before = workAt(task.calendar, progress.start);
  for (let k = 0; k < block.n; k++) {
    const d = duration[k] as number;
    finish[k] = d <= tolerance ? progress.start : finishMoment(task.calendar, before + d);
  }
}

/**
 * Bounds from links, no earlier than the project start, into the scratch rows: `scratch` holds the earliest
 * start, `scratch2` the required finish where a link asks for one.
 */
function boundByLinks(task: ModelTask, block: Block): { finishBound: boolean } {
  const { n, scratch: lower, scratch2: upper } = block;
  lower.fill(0, 0, n);
  let finishBound = false;
  for (const link of task.links) {
    const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
    const from = (fromFinish ? block.finish[link.from] : block.start[link.from]) as Float64Array;
    const toFinish = link.kind === "finish-to-finish" || link.kind === "start-to-finish";
    if (toFinish && !finishBound) {
      upper.fill(0, 0, n);
      finishBound = true;
    }
    raise(toFinish ? upper : lower, from, link, block);
  }
  return { finishBound };
}

/** out = max(out, from + lag), working days on the lag's calendar. */
function raise(out: Float64Array, from: Float64Array, link: ModelLink, block: Block): void {
  const { n, kernel } = block;
  if (link.direct) {
    kernel.raiseTo(out, from, n);
    return;
  }
  const fixed = link.lag.value * link.lagScale;
  if (link.lag.slot < 0 && fixed > tolerance) {
    kernel.raiseAfter(kernel.arena.calendar(link.lagCalendar), out, from, fixed, n);
    return;
  }
  const draws = link.lag.slot < 0 ? undefined : (block.draws[link.lag.slot] as Float64Array);
  const calendar = kernel.arena.calendar(link.lagCalendar);
  kernel.raiseBy(calendar, out, from, draws, link.lag.value, link.lagScale, n);
}

/** Every case: waits, required finishes, tasks not needed, milestones, unbroken work. */
function settleAny(
  task: ModelTask,
  block: Block,
  j: number,
  floor: number,
  statusFloor: number,
  finishBound: boolean,
): void {
  const { n, kernel, scratch: lower, scratch2: upper } = block;
  const { arena } = kernel;
  const start = block.start[j] as Float64Array;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const needed = block.needed[j];
  const wait = block.wait[j];
  const calendar = arena.calendar(task.calendar);
  const startsWork = task.kind === "milestone-start";
  const work: AnyWork = {
    calendar,
    own: wait === undefined ? calendar : arena.calendar(task.ownCalendar),
    lower,
    upper: finishBound ? upper : undefined,
    needed,
    wait,
    duration,
    start,
    finish,
    notBefore: task.notBefore,
    floor,
    statusFloor,
    startsWork,
  };
  kernel.settleAny(work, n);
  if (task.unbroken === undefined || startsWork) return;
  for (let k = 0; k < n; k++) {
    const d = duration[k] as number;
    if (d <= tolerance || (needed !== undefined && needed[k] === 0)) continue;
    keepWhole(task.calendar, task.unbroken, start, finish, k, d);
  }
}
