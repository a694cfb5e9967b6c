import { tolerance } from "../../../calendar/tolerance.ts";
import type { Task } from "../../../plan/types.ts";
import { memberPlace, type Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import { memberPlaces, taskPlaces } from "../changes/taskPlaces.ts";
import type { Together } from "./together.ts";

/** Within a task: milestones have no work, effort needs somebody, progress needs a status date it lies before. */
export function joinTasks(pair: Pair, { join }: Together): void {
  const { older, newer } = pair;
  for (const after of newer.tasks.values()) {
    const before = older.tasks.get(after.id);
    if (before === undefined) continue;
    if ((before.milestone === false) !== (after.milestone === false)) {
      const touching = [...older.entries.values(), ...newer.entries.values()]
        .filter((entry) => entry.impacts.some((impact) => impact.tasks.includes(after.id)))
        .flatMap((entry) => [places.entry(entry.id), places.impacts(entry.id)]);
      join([...taskPlaces(pair, before, after), ...touching]);
    }
    if ((before.effort ?? after.effort) !== undefined && leastShare(pair, before, after) <= tolerance) {
      join([places.work(after.id), ...memberPlaces(pair, before, after)]);
    }
  }
  joinProgress(pair, join);
}

/** The smallest sum of shares any mixture of the two teams has. */
function leastShare(pair: Pair, before: Task, after: Task): number {
  const people = [...new Set([...before.people, ...after.people].map(({ id }) => id))];
  const shareIn = (task: Task, person: string) => task.people.find(({ id }) => id === person)?.share ?? 0;
  return people.reduce((sum, person) => {
    const now = shareIn(after, person);
    const fixed = memberPlace(pair, before, after, person) === undefined;
    return sum + (fixed ? now : Math.min(now, shareIn(before, person)));
  }, 0);
}

/** Recorded days lie between the start and the status date of whatever they are put together with. */
function joinProgress({ older, newer }: Pair, join: Together["join"]): void {
  const statuses = [older.plan.statusDate, newer.plan.statusDate];
  const starts = [older.plan.start, newer.plan.start];
  for (const { tasks } of [older, newer]) {
    for (const { id, started, finished } of tasks.values()) {
      const days = [started, finished].filter((day) => day !== undefined);
      if (days.length === 0) continue;
      const here = [places.progress(id), places.task(id)];
      const late = statuses.some((status) => status === undefined || days.some((day) => day > status));
      const early = starts.some((start) => days.some((day) => day < start));
      for (const place of here) {
        if (late) join([place, places.statusDate]);
        if (early) join([place, places.start]);
      }
    }
  }
  // Without this, whatever was done since would seem to be begun after the new status date.
  if (statuses[0] !== statuses[1]) {
    for (const id of newer.tasks.keys()) join([places.progress(id), places.statusDate]);
  }
}
