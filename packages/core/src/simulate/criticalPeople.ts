import { tolerance } from "../calendar/tolerance.ts";
import { nextWork } from "../calendar/workCalendar.ts";
import type { Block } from "./block.ts";
import type { Model, ModelTask } from "./model.ts";
import { precedes } from "./rivals.ts";

/**
 * Marks the tasks whose end frees the people task j waits for: they share a person, they end as j starts, and
 * were they still going, that person's capacity would not hold j too. `position` is j's place in the order.
 *
 * Returns whether a task later in the order was newly marked (it filled an earlier gap), so that the backward
 * pass has to go round once more.
 */
export function markByPeople(
  model: Model,
  block: Block,
  task: ModelTask,
  j: number,
  position: number,
): boolean {
  const moving = block.moves[j] as Uint8Array;
  const starts = block.start[j] as Float64Array;
  const durations = block.duration[j] as Float64Array;
  let later = false;
  for (const hold of task.holds) {
    const person = model.people[hold.person] as Model["people"][number];
    const sharing = sharersOf(model, hold.person);
    for (const other of sharing) {
      // What follows j by its links ends after j has begun.
      if (other.task === j || precedes(model, j, other.task)) continue;
      const from = model.tasks[other.task] as ModelTask;
      const target = block.moves[other.task] as Uint8Array;
      const finish = block.finish[other.task] as Float64Array;
      const length = block.duration[other.task] as Float64Array;
      for (let k = 0; k < block.n; k++) {
        if (moving[k] === 0 || target[k] === 1) continue;
        if ((durations[k] as number) <= tolerance || (length[k] as number) <= tolerance) continue;
        const s = starts[k] as number;
        const f = finish[k] as number;
        if (f > s + tolerance || nextWork(from.calendar, f) < s - tolerance) continue;
        let load = loadBeside(block, sharing, j, position, other.task, s, k);
        if (!hold.along) load += absentAt(person.partial, s);
        if (load + other.share + hold.share <= person.capacity + tolerance) continue;
        target[k] = 1;
        (block.pushed[other.task] as Uint8Array)[k] = 1;
        if (other.position > position) later = true;
      }
    }
  }
  return later;
}

interface Sharer {
  task: number;
  share: number;
  position: number;
}

const sharers = new WeakMap<Model, Map<number, Sharer[]>>();

/** Every task that holds a share of the person, with its place in the order. */
function sharersOf(model: Model, person: number): Sharer[] {
  let byPerson = sharers.get(model);
  if (byPerson === undefined) {
    byPerson = new Map();
    model.order.forEach((task, position) => {
      const { holds, progress } = model.tasks[task] as ModelTask;
      if (progress?.finished === true) return;
      for (const hold of holds) {
        const list = byPerson?.get(hold.person) ?? [];
        list.push({ task, share: hold.share, position });
        byPerson?.set(hold.person, list);
      }
    });
    sharers.set(model, byPerson);
  }
  return byPerson.get(person) ?? [];
}

/** What the person holds at j's start besides j and the one that ends: tasks already going, ties by order. */
function loadBeside(
  block: Block,
  sharing: readonly Sharer[],
  j: number,
  position: number,
  except: number,
  s: number,
  k: number,
): number {
  let load = 0;
  for (const other of sharing) {
    if (other.task === j || other.task === except) continue;
    const from = (block.start[other.task] as Float64Array)[k] as number;
    const to = (block.finish[other.task] as Float64Array)[k] as number;
    if (to <= s + tolerance || from > s + tolerance) continue;
    if (from < s - tolerance || other.position < position) load += other.share;
  }
  return load;
}

/** The part of a person's capacity that is away at moment s. */
function absentAt(spans: Model["people"][number]["partial"], s: number): number {
  for (const span of spans) if (span.from <= s + tolerance && span.to > s + tolerance) return span.gone;
  return 0;
}
