import type { WorkCalendar } from "../calendar/workCalendar.ts";
import {
  bytesOfCalendar,
  bytesOfDrawer,
  bytesOfLink,
  bytesOfPeople,
  bytesOfPieces,
  bytesOfRows,
  bytesOfTable,
  type Kernel,
  loadKernel,
  plainKernel,
} from "../kernel/index.ts";
import { blockSize } from "../sampling/streams/blockSize.ts";
import type { Model, ModelTask } from "./model.ts";
import { followsProgram } from "./program/followsProgram.ts";
import { bytesOfProgram } from "./program/writeProgram.ts";

export { blockSize };

/**
 * One block of iterations while it is computed: rows of `n` values, one row per slot, task or entry
 * (structure of arrays). Rows are made once, in the kernel's memory, and used again for every block.
 *
 * A point (a milestone, a realised duration of 0, a task not needed) has start = finish.
 */
export interface Block {
  kernel: Kernel;
  n: number;
  /** Draws by slot, in the written unit, cut at zero where that applies. */
  draws: Float64Array[];
  /** By entry: 1 where it occurs. */
  occurs: Uint8Array[];
  /** By task: 1 where needed; undefined: in every iteration. */
  needed: (Uint8Array | undefined)[];
  /** Realised durations in working days; 0 where not needed. The draws themselves where nothing changes them. */
  duration: Float64Array[];
  /** Working days that impacts hold a task back; undefined: none. */
  wait: (Float64Array | undefined)[];
  /** Moments, days since start. */
  start: Float64Array[];
  finish: Float64Array[];
  /** 1 where nudging the task on from just where it stands moves the plan's finish. */
  moves: Uint8Array[];
  /**
   * 1 where its own push moves it: on to the next moment its calendar works. It differs from `moves` only for
   * points on a day off, so tasks that are never points share one row for both.
   */
  pushed: Uint8Array[];
  /** The plan's finish (or that of `finishOf`) and the day its date falls on. */
  planFinish: Float64Array;
  planFinishDay: Int32Array;
  cost: Float64Array;
  scratch: Float64Array;
  scratch2: Float64Array;
}

/**
 * The WebAssembly kernel with room for `blocks` blocks of the model, what is needed to draw them, and `more` bytes; or
 * the plain one: the same bits.
 */
export function kernelFor(model: Model, size: number, blocks = 1, more = 0): Kernel {
  const room = blocks * bytesOfBlock(model, size) + bytesOfTables(model) + more;
  return loadKernel(room) ?? plainKernel(room);
}

/** Rows for up to `size` iterations; without a kernel, of the plain one. About 26 bytes * size per task, 8 per slot. */
export function newBlock(model: Model, size: number, kernel: Kernel = plainKernelFor(model, size)): Block {
  const { arena } = kernel;
  const row = () => arena.rows(1, size)[0] as Float64Array;
  const flags = () => arena.bytes(1, size)[0] as Uint8Array;
  const draws = arena.rows(model.slots.length, size);
  const moves = model.tasks.map(flags);
  return {
    kernel,
    n: size,
    draws,
    occurs: model.register.map(flags),
    needed: model.tasks.map((task) => (task.chance < 1 ? flags() : undefined)),
    duration: model.tasks.map((task) =>
      drawnAsIs(task) ? (draws[task.duration.slot] as Float64Array) : row(),
    ),
    wait: model.tasks.map((task) => (waits(model, task) ? row() : undefined)),
    start: model.tasks.map(row),
    finish: model.tasks.map(row),
    moves,
    pushed: model.tasks.map((task, j) => (task.mayBePoint ? flags() : (moves[j] as Uint8Array))),
    planFinish: row(),
    planFinishDay: arena.int32(1, size)[0] as Int32Array,
    cost: row(),
    scratch: row(),
    scratch2: row(),
  };
}

/** A plain kernel for a block that nothing is drawn into: without room for tables. */
export function undrawnKernel(model: Model, size: number): Kernel {
  return plainKernel(bytesOfBlock(model, size));
}

function plainKernelFor(model: Model, size: number): Kernel {
  return plainKernel(bytesOfBlock(model, size) + bytesOfTables(model));
}

/** Whether the realised duration is the draw and nothing else. */
export function drawnAsIs(task: ModelTask): boolean {
  return (
    task.duration.slot >= 0 &&
    task.durationScale === 1 &&
    task.impacts.length === 0 &&
    task.progress === undefined &&
    task.chance >= 1
  );
}

function waits(model: Model, task: ModelTask): boolean {
  return task.impacts.some((at) => model.register[at.entry]?.impacts[at.impact]?.wait !== undefined);
}

export function bytesOfBlock(model: Model, size: number): number {
  const doubles = model.slots.length + 4 * model.tasks.length + 8;
  const bytes = model.register.length + 3 * model.tasks.length + 2;
  return bytesOfRows(doubles, size, 8) + bytesOfRows(bytes, size, 1) + bytesOfRows(1, size, 4);
}

/** Quantile and outcome tables, calendars, and rows for uniforms (twice a correlated set's). */
export function bytesOfTables(model: Model): number {
  const uniforms = 2 + model.groups.length + 2 * (model.correlated?.slots.length ?? 0);
  // Plain loops: this is asked once, when they are quicker than anything handed a function.
  const calendars = new Set<WorkCalendar>();
  if (model.overheads.length > 0) calendars.add(model.planCalendar);
  for (const task of model.tasks) {
    const { calendar, ownCalendar, links } = task;
    calendars.add(calendar);
    if (ownCalendar !== calendar && waits(model, task)) calendars.add(ownCalendar);
    for (const { lagCalendar } of links) if (lagCalendar !== calendar) calendars.add(lagCalendar);
  }
  let tables = 0;
  for (const { estimate } of model.slots) {
    if (estimate.kind === "range") tables += bytesOfTable;
    else if (estimate.kind === "outcomes") tables += bytesOfRows(2, estimate.outcomes.length, 8);
  }
  let ofCalendars = 0;
  for (const calendar of calendars) ofCalendars += bytesOfCalendar(calendar);
  return (
    (followsProgram(model) ? bytesOfProgram(model) : 0) +
    bytesOfPieces +
    tables +
    ofCalendars +
    (model.limitedPeople ? bytesOfWaiting(model) : 0) +
    bytesOfLink +
    bytesOfRows(uniforms, blockSize, 8) +
    bytesOfDrawer(model.slots.length)
  );
}

/** What the kernel is told of one task's people, at most. */
function bytesOfWaiting(model: Model): number {
  const holders = new Float64Array(model.people.length);
  for (const { holds } of model.tasks) {
    for (const { person } of holds) holders[person] = (holders[person] as number) + 1;
  }
  let most = 0;
  for (const { holds } of model.tasks) {
    let others = 0;
    let absences = 0;
    for (const { person } of holds) {
      others += holders[person] as number;
      absences += (model.people[person] as Model["people"][number]).partial.length;
    }
    most = Math.max(most, bytesOfPeople(holds.length, others, absences));
  }
  return most + 8;
}
