import { tolerance } from "../../calendar/tolerance.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import { aloneStart } from "../paths/aloneStart.ts";
import type { Bound } from "../paths/boundsOf.ts";
import { loadBefore } from "../paths/peopleBounds.ts";
import type { Placed } from "../paths/placed.ts";

/**
 * Until when somebody task j names had no room for it, of the tasks placed before it: the last such end up to its
 * start in iteration k. Where it made the task wait, that is what the task waited for. Tasks it follows anyhow, by a
 * link from finish to start, are left to their links. Undefined: had room all along.
 *
 * @param h  Which of the task's holds.
 */
export function busyUntil(placed: Placed, j: number, h: number, k: number): Bound | undefined {
  const { model, block, sharers, position } = placed;
  const task = model.tasks[j] as ModelTask;
  const hold = task.holds[h] as ModelTask["holds"][number];
  const person = model.people[hold.person] as Model["people"][number];
  const start = (block.start[j] as Float64Array)[k] as number;
  const d = (block.duration[j] as Float64Array)[k] as number;
  let found: Bound | undefined;
  const ends = (moment: number, from: number) => {
    if (moment > start + tolerance || moment <= (found?.moment ?? 0) + tolerance) return;
    if (loadBefore(placed, j, hold, moment, k) + hold.share <= person.capacity + tolerance) return;
    const kind = from < 0 ? "away" : "person";
    found = {
      kind,
      at: hold.person,
      from,
      moment,
      wait: 0,
      start: aloneStart(task, d, false, moment, false),
    };
  };
  for (const other of sharers[hold.person] ?? []) {
    if (other.position >= (position[j] as number)) break;
    const from = (block.start[other.task] as Float64Array)[k] as number;
    const to = (block.finish[other.task] as Float64Array)[k] as number;
    if (to - from > tolerance && !follows(task, other.task)) ends(to, other.task);
  }
  if (!hold.along) for (const { to } of person.partial) ends(to, -1);
  return found;
}

function follows(task: ModelTask, other: number): boolean {
  return task.links.some(
    ({ from, kind, lag }) => from === other && kind === "finish-to-start" && lag.slot < 0 && lag.value >= 0,
  );
}
