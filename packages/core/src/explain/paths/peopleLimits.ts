import { tolerance } from "../../calendar/tolerance.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import type { Placed, Sharer } from "./placed.ts";

/** Told that a task has to be done by a moment, in iteration k. */
type Limit = (task: number, k: number, moment: number) => void;

/**
 * Which tasks have to be done before others can start, for the sake of people: those that end before a task and, were
 * they still going as it starts, would leave it no room. Of a person who holds one task at a time that is the task
 * before, those before it being held by it.
 */
export interface PeopleLimits {
  /** Takes the moments of a block as they stand now. */
  look(): void;
  /** `latest`: by iteration, the latest start of task j; `limit` is told of each task that has to be done by then. */
  limit(j: number, latest: Float64Array, limit: Limit): void;
}

export function peopleLimits(placed: Placed): PeopleLimits {
  const { model, block, sharers } = placed;
  const single = model.people.map((person, p) => oneAtATime(sharers[p] ?? [], person.capacity));
  // By task and hold: the task before it in each iteration, or -1.
  const before = model.tasks.map((task) =>
    task.holds.map((hold) => (single[hold.person] === true ? new Int32Array(block.n) : undefined)),
  );
  return {
    look() {
      model.people.forEach((_, p) => {
        if (single[p] === true) lookAtPerson(placed, p, before);
      });
    },
    limit(j, latest, limit) {
      const task = model.tasks[j] as ModelTask;
      task.holds.forEach((hold, h) => {
        const previous = before[j]?.[h];
        if (previous === undefined) limitByLoad(placed, j, hold, latest, limit);
        else limitByOne(placed, hold.person, j, previous, latest, limit);
      });
    },
  };
}

/** Whether no two of the tasks fit beside each other. */
function oneAtATime(tasks: readonly Sharer[], capacity: number): boolean {
  const [least, next] = tasks.map(({ share }) => share).sort((a, b) => a - b);
  return least === undefined || next === undefined || least + next > capacity + tolerance;
}

/** Puts the tasks of a person in the order of their starts, iteration by iteration. */
function lookAtPerson(placed: Placed, p: number, before: (Int32Array | undefined)[][]): void {
  const { model, block } = placed;
  const tasks = (placed.sharers[p] ?? []).map(({ task }) => task);
  const rows = tasks.map((task) => {
    const h = model.tasks[task]?.holds.findIndex((hold) => hold.person === p) ?? -1;
    return before[task]?.[h] as Int32Array;
  });
  const order = new Int32Array(tasks.length);
  const starts = new Float64Array(tasks.length);
  for (let k = 0; k < block.n; k++) {
    let count = 0;
    for (let i = 0; i < tasks.length; i++) {
      const task = tasks[i] as number;
      (rows[i] as Int32Array)[k] = -1;
      if (((block.duration[task] as Float64Array)[k] as number) <= tolerance) continue;
      const start = (block.start[task] as Float64Array)[k] as number;
      let at = count++;
      for (; at > 0 && (starts[at - 1] as number) > start; at--) {
        starts[at] = starts[at - 1] as number;
        order[at] = order[at - 1] as number;
      }
      starts[at] = start;
      order[at] = i;
    }
    for (let at = 1; at < count; at++) {
      (rows[order[at] as number] as Int32Array)[k] = tasks[order[at - 1] as number] as number;
    }
  }
}

/** The task before, and those under way: what has started may overlap, and is not held by another. */
function limitByOne(
  { model, block, sharers }: Placed,
  person: number,
  j: number,
  previous: Int32Array,
  latest: Float64Array,
  limit: Limit,
): void {
  const starts = block.start[j] as Float64Array;
  const started = (sharers[person] ?? []).filter(({ task }) => model.tasks[task]?.progress !== undefined);
  for (let k = 0; k < block.n; k++) {
    const moment = latest[k] as number;
    if (moment === Number.POSITIVE_INFINITY) continue;
    const task = previous[k] as number;
    if (task < 0) continue;
    limit(task, k, moment);
    for (const other of started) {
      const to = (block.finish[other.task] as Float64Array)[k] as number;
      if (other.task !== task && to <= (starts[k] as number) + tolerance) limit(other.task, k, moment);
    }
  }
}

/** By what the person holds as task j starts. */
function limitByLoad(
  { model, block, sharers, position }: Placed,
  j: number,
  hold: ModelTask["holds"][number],
  latest: Float64Array,
  limit: Limit,
): void {
  const starts = block.start[j] as Float64Array;
  const durations = block.duration[j] as Float64Array;
  const person = model.people[hold.person] as Model["people"][number];
  const others = (sharers[hold.person] ?? []).filter((other) => other.task !== j);
  for (let k = 0; k < block.n; k++) {
    const moment = latest[k] as number;
    if (moment === Number.POSITIVE_INFINITY || (durations[k] as number) <= tolerance) continue;
    const s = starts[k] as number;
    let load = hold.share;
    for (const other of others) {
      const from = (block.start[other.task] as Float64Array)[k] as number;
      const to = (block.finish[other.task] as Float64Array)[k] as number;
      if (to <= s + tolerance || from > s + tolerance) continue;
      if (from < s - tolerance || other.position < (position[j] as number)) load += other.share;
    }
    if (!hold.along) {
      for (const { from, to, gone } of person.partial) {
        if (from <= s + tolerance && to > s + tolerance) load += gone;
      }
    }
    for (const other of others) {
      if (load + other.share <= person.capacity + tolerance) continue;
      const to = (block.finish[other.task] as Float64Array)[k] as number;
      if (to > s + tolerance || ((block.duration[other.task] as Float64Array)[k] as number) <= tolerance) {
        continue;
      }
      limit(other.task, k, moment);
    }
  }
}
