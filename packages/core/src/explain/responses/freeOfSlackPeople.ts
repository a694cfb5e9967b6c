import type { Model, ModelTask } from "../../simulate/model.ts";
import { mostAtOnce } from "./mostAtOnce.ts";

/** Tasks of one person above which no proof is tried. */
const mostTasks = 200;

/**
 * The same model without the holdings of people who can never be asked for more than they have, whatever is drawn:
 * they move nothing, and without them less has to be placed again. In many plans nobody is left.
 *
 * A person is such when the tasks that can be under way at once ask for no more than the capacity present on
 * the worst day. Two tasks cannot be under way at once when one follows the other over links from finish to start
 * with lags that are never negative; a started task is not moved by its links, so they order nothing.
 */
export function freeOfSlackPeople(model: Model): Model {
  if (!model.limitedPeople) return model;
  const follows = closure(model);
  const slack = model.people.map((person, p) => {
    const held = model.tasks.flatMap((task, j) => {
      const hold = task.progress?.finished === true ? undefined : task.holds.find((one) => one.person === p);
      return hold === undefined ? [] : [{ j, share: hold.share }];
    });
    if (held.length > mostTasks) return false;
    const gone = person.partial.reduce((most, span) => Math.max(most, span.gone), 0);
    const at = (i: number) => (held[i] as { j: number }).j;
    const most = mostAtOnce(
      held.map(({ share }) => share),
      (i, j) => (follows[at(j)] as Uint8Array)[at(i)] === 1,
    );
    return most <= person.capacity - gone + 1e-10;
  });
  if (!slack.includes(true)) return model;
  const tasks = model.tasks.map((task): ModelTask => {
    const holds = task.holds.filter(({ person }) => slack[person] !== true);
    return holds.length === task.holds.length ? task : { ...task, holds };
  });
  return { ...model, tasks, limitedPeople: tasks.some((task) => task.holds.length > 0) };
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
