import { tolerance } from "../../calendar/tolerance.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import type { Placed } from "./placed.ts";

/**
 * Which tasks have to be done before task j can start, for the sake of people: those that end before it and, were
 * they still going as it starts, would leave it no room. `limit` is told of each, with the latest start of j.
 *
 * @param latest  By iteration: the latest start of j.
 */
export function peopleLimits(
  { model, block, sharers, position }: Placed,
  j: number,
  latest: Float64Array,
  limit: (task: number, k: number, moment: number) => void,
): void {
  const task = model.tasks[j] as ModelTask;
  const starts = block.start[j] as Float64Array;
  const durations = block.duration[j] as Float64Array;
  for (const hold of task.holds) {
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
}
