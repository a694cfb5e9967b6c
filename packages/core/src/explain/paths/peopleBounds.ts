import { tolerance } from "../../calendar/tolerance.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import { aloneStart } from "./aloneStart.ts";
import type { Bound } from "./boundsOf.ts";
import type { Placed } from "./placed.ts";

/**
 * For whom task j, which could have started at `free`, waited in iteration k: the ends (of tasks placed before it, or
 * of partial absences) from which it starts where it starts, and just before which the person's capacity would not
 * have held it too.
 */
export function peopleBounds(placed: Placed, j: number, k: number, free: number): Bound[] {
  const { model, block, sharers, position } = placed;
  const task = model.tasks[j] as ModelTask;
  const start = (block.start[j] as Float64Array)[k] as number;
  const d = (block.duration[j] as Float64Array)[k] as number;
  const bounds: Bound[] = [];
  for (const hold of task.holds) {
    const person = model.people[hold.person] as Model["people"][number];
    const ends = (moment: number): boolean =>
      moment > free + tolerance &&
      moment <= start + tolerance &&
      aloneStart(task, d, false, moment, false) >= start - tolerance &&
      loadBefore(placed, j, hold, moment, k) + hold.share > person.capacity + tolerance;
    for (const other of sharers[hold.person] ?? []) {
      if (other.position >= (position[j] as number)) break;
      const moment = (block.finish[other.task] as Float64Array)[k] as number;
      const from = (block.start[other.task] as Float64Array)[k] as number;
      if (moment - from <= tolerance || !ends(moment)) continue;
      bounds.push({ kind: "person", at: hold.person, from: other.task, moment, wait: 0, start });
    }
    if (hold.along) continue;
    for (const { to } of person.partial) {
      if (ends(to)) bounds.push({ kind: "away", at: hold.person, from: -1, moment: to, wait: 0, start });
    }
  }
  return bounds;
}

/** What the person holds, or lacks, just before a moment: of the tasks placed before j. */
export function loadBefore(
  { model, block, sharers, position }: Placed,
  j: number,
  hold: ModelTask["holds"][number],
  moment: number,
  k: number,
): number {
  const holdsAt = (from: number, to: number) => from < moment - tolerance && to >= moment - tolerance;
  let load = 0;
  for (const other of sharers[hold.person] ?? []) {
    if (other.position >= (position[j] as number)) break;
    const from = (block.start[other.task] as Float64Array)[k] as number;
    const to = (block.finish[other.task] as Float64Array)[k] as number;
    if (to - from > tolerance && holdsAt(from, to)) load += other.share;
  }
  if (hold.along) return load;
  for (const { from, to, gone } of model.people[hold.person]?.partial ?? [])
    if (holdsAt(from, to)) load += gone;
  return load;
}
