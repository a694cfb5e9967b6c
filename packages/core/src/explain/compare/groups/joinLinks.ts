import type { Id, Task } from "../../../plan/types.ts";
import { idsOf, type Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import type { Together } from "./together.ts";

/**
 * A task that only one plan has goes with everything that names it. Links that could form a loop when some are old
 * and some new go together.
 */
export function joinLinks(pair: Pair, { join }: Together): void {
  const { older, newer } = pair;
  const onlyIn = (id: Id) => older.tasks.has(id) !== newer.tasks.has(id);
  for (const { tasks, overheads, entries, plan } of [older, newer]) {
    for (const task of tasks.values()) {
      for (const link of task.after) {
        if (onlyIn(link.task)) join([places.task(link.task), placeOfLinks(pair, task)]);
      }
    }
    for (const { id, from, to } of overheads.values()) {
      for (const end of [from, to]) {
        if (end === undefined || !onlyIn(end)) continue;
        join([places.task(end), places.overhead(id)]);
        join([places.task(end), places.overheadTerms(id)]);
      }
    }
    for (const { id, impacts } of entries.values()) {
      for (const impact of impacts) {
        if (impact.phase !== undefined) continue;
        for (const task of impact.tasks) {
          if (!onlyIn(task)) continue;
          join([places.task(task), places.entry(id)]);
          join([places.task(task), places.impacts(id)]);
        }
      }
    }
    const { finishOf } = plan.commitment;
    if (finishOf !== undefined && onlyIn(finishOf)) join([places.task(finishOf), places.finishOf]);
  }
  join(inLoops(pair).map(({ id }) => (onlyIn(id) ? places.task(id) : places.logic(id))));
}

function placeOfLinks(pair: Pair, task: Task): string {
  const both = pair.older.tasks.has(task.id) && pair.newer.tasks.has(task.id);
  return both ? places.logic(task.id) : places.task(task.id);
}

/** Tasks on, or between, loops of the links of both plans taken together. */
function inLoops({ older, newer }: Pair): Task[] {
  const after = new Map<Id, Set<Id>>();
  const before = new Map<Id, Set<Id>>();
  const ids = idsOf(older.tasks, newer.tasks);
  for (const id of ids) {
    after.set(id, new Set());
    before.set(id, new Set());
  }
  for (const { tasks } of [older, newer]) {
    for (const task of tasks.values()) {
      for (const link of task.after) {
        after.get(link.task)?.add(task.id);
        before.get(task.id)?.add(link.task);
      }
    }
  }
  // What nothing leads to, or what leads nowhere, is on no loop: taken away until nothing of the kind is left.
  const queue = ids.filter((id) => before.get(id)?.size === 0 || after.get(id)?.size === 0);
  const gone = new Set(queue);
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    for (const [near, far] of [
      [after, before],
      [before, after],
    ] as const) {
      for (const next of near.get(id) ?? []) {
        far.get(next)?.delete(id);
        if (gone.has(next) || (far.get(next)?.size ?? 0) > 0) continue;
        gone.add(next);
        queue.push(next);
      }
    }
  }
  return ids.flatMap((id) => {
    const task = newer.tasks.get(id) ?? older.tasks.get(id);
    return gone.has(id) || task === undefined ? [] : [task];
  });
}
