import type { Model, ModelPerson, ModelTask } from "../../simulate/model.ts";
import { mostAtOnce } from "./mostAtOnce.ts";

/** Tasks of one person above which no proof is tried. */
const mostTasks = 120;

/**
 * The same model without the holdings that can never make anybody wait, whatever is drawn: they move nothing, and
 * without them less has to be placed again. In many plans none is left.
 *
 * A task's holding of a person is such when the tasks of that person that can be under way together with it ask,
 * with it, for no more than the capacity present on the worst day. Two tasks cannot be under way at once when one
 * follows the other over links from finish to start with lags that are never negative; a started task is not moved by
 * its links, so they order nothing.
 */
export function freeOfSlackPeople(model: Model): Model {
  if (!model.limitedPeople) return model;
  const before = closure(model);
  const binding = model.people.map((person, p) => bindingTasks(model, person, p, before));
  const tasks = model.tasks.map((task, j): ModelTask => {
    const holds = task.holds.filter(({ person }) => binding[person]?.has(j) === true);
    return holds.length === task.holds.length ? task : { ...task, holds };
  });
  return { ...model, tasks, limitedPeople: tasks.some((task) => task.holds.length > 0) };
}

/** Tasks whose holding of a person can make somebody wait. */
function bindingTasks(
  model: Model,
  person: ModelPerson,
  p: number,
  before: readonly Uint8Array[],
): ReadonlySet<number> {
  const held = model.tasks.flatMap((task, j) => {
    const hold = task.progress?.finished === true ? undefined : task.holds.find((one) => one.person === p);
    return hold === undefined ? [] : [{ j, share: hold.share }];
  });
  if (held.length > mostTasks) return new Set(held.map(({ j }) => j));
  const ahead = (a: number, b: number) => (before[b] as Uint8Array)[a] === 1;
  const most = (tasks: typeof held) =>
    mostAtOnce(
      tasks.map(({ share }) => share),
      (a, b) => ahead((tasks[a] as { j: number }).j, (tasks[b] as { j: number }).j),
    );
  const gone = person.partial.reduce((worst, span) => Math.max(worst, span.gone), 0);
  const room = person.capacity - gone + 1e-10;
  if (most(held) <= room) return new Set();
  const binding = held.filter(({ j, share }) => {
    const beside = held.filter((other) => other.j !== j && !ahead(j, other.j) && !ahead(other.j, j));
    return share + most(beside) > room;
  });
  return new Set(binding.map(({ j }) => j));
}

/** By task: 1 for the tasks that have always finished before it starts. */
function closure({ tasks, order }: Model): Uint8Array[] {
  const before = tasks.map(() => new Uint8Array(tasks.length));
  for (const j of order) {
    const task = tasks[j] as ModelTask;
    if (task.progress !== undefined) continue;
    const row = before[j] as Uint8Array;
    for (const link of task.links) {
      if (link.kind !== "finish-to-start" || link.lag.slot >= 0 || link.lag.value < 0) continue;
      row[link.from] = 1;
      const further = before[link.from] as Uint8Array;
      for (let i = 0; i < row.length; i++) if (further[i] === 1) row[i] = 1;
    }
  }
  return before;
}
