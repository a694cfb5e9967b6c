import type { SharedPerson, Sharer } from "../kernel/index.ts";
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
  const { kernel, n } = block;
  let later = false;
  for (const hold of task.holds) {
    const person = model.people[hold.person] as Model["people"][number];
    const shared: SharedPerson = {
      share: hold.share,
      capacity: person.capacity,
      partial: hold.along ? [] : person.partial,
      sharers: othersOf(model, block, hold.person, j, position),
    };
    const marked = kernel.markSharers(
      shared,
      block.moves[j] as Uint8Array,
      block.start[j] as Float64Array,
      block.duration[j] as Float64Array,
      n,
    );
    if (marked) later = true;
  }
  return later;
}

/** Who else holds a share of the person, with the rows of the block. */
function othersOf(model: Model, block: Block, person: number, j: number, position: number): Sharer[] {
  const others: Sharer[] = [];
  for (const other of sharersOf(model, person)) {
    if (other.task === j) continue;
    others.push({
      share: other.share,
      before: other.position < position,
      // What follows j by its links ends after j has begun.
      frees: !precedes(model, j, other.task),
      calendar: block.kernel.arena.calendar((model.tasks[other.task] as ModelTask).calendar),
      start: block.start[other.task] as Float64Array,
      finish: block.finish[other.task] as Float64Array,
      duration: block.duration[other.task] as Float64Array,
      moves: block.moves[other.task] as Uint8Array,
      pushed: block.pushed[other.task] as Uint8Array,
    });
  }
  return others;
}

interface Holder {
  task: number;
  share: number;
  position: number;
}

const sharers = new WeakMap<Model, Map<number, Holder[]>>();

/** Every task that holds a share of the person, with its place in the order. */
function sharersOf(model: Model, person: number): Holder[] {
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
