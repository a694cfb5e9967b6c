import type { Plan } from "../plan/types.ts";
import type { AsWritten } from "./asWritten.ts";
import { drawNames } from "./keptDraws.ts";
import type { Model, ModelTask } from "./model.ts";

/** A model with its plan as written. */
export interface Written {
  model: Model;
  asWritten: AsWritten;
}

/**
 * Which tasks may stand elsewhere in some iteration than they did before, on the same draws: those whose own numbers
 * changed, all that follow them by links and, with limited people, tasks placed later that share a person with those.
 *
 * Undefined where what all tasks share changed: the start, calendars, people, the tasks there are or their order.
 *
 * Cost: a few microseconds a task.
 */
export function reachedTasks(before: Written, now: Written): Uint8Array | undefined {
  const { model } = now;
  if (common(before.model.plan) !== common(model.plan)) return undefined;
  if (model.tasks.length !== before.model.tasks.length) return undefined;
  if (model.limitedPeople !== before.model.limitedPeople) return undefined;
  if (model.limitedPeople && String(model.order) !== String(before.model.order)) return undefined;
  const own = signatures(now);
  const old = signatures(before);
  const reached = new Uint8Array(model.tasks.length);
  for (let j = 0; j < reached.length; j++) {
    if (model.tasks[j]?.id !== before.model.tasks[j]?.id) return undefined;
    if (own[j] !== old[j]) reached[j] = 1;
  }
  const busy = new Set<number>();
  for (const j of model.order) {
    const task = model.tasks[j] as ModelTask;
    const follows = task.links.some((link) => reached[link.from] === 1);
    const shares = model.limitedPeople && task.holds.some((hold) => busy.has(hold.person));
    if (follows || shares) reached[j] = 1;
    if (reached[j] === 1) for (const hold of task.holds) busy.add(hold.person);
  }
  return reached;
}

/** What every task's place depends on besides the task itself. */
function common({ start, statusDate, calendars, calendar, people, respectCapacity, phases }: Plan): string {
  return JSON.stringify([start, statusDate, [...calendars], calendar, people, respectCapacity, phases]);
}

/** By task: everything of its own that decides where it stands, names and money apart. */
function signatures({ model, asWritten }: Written): string[] {
  const tasks = new Map(model.plan.tasks.map((task) => [task.id, task]));
  const entries = new Map(
    [...model.plan.risks, ...model.plan.assumptions].map((entry) => [
      entry.id,
      JSON.stringify(entry.impacts),
    ]),
  );
  const names = drawNames(model);
  const drawn = (slot: number | undefined) => (slot === undefined || slot < 0 ? "" : names[slot]);
  return model.tasks.map((task, j) => {
    const own = tasks.get(task.id);
    const impacts = task.impacts.map((at) => {
      const entry = model.register[at.entry];
      const parts = entry?.impacts[at.impact];
      return [
        entry?.id,
        entry?.item,
        model.groups[entry?.group ?? -1]?.name,
        entry?.lo,
        entry?.hi,
        entry?.fact,
        entry?.scale,
        entries.get(entry?.id ?? ""),
        [parts?.delay, parts?.factor, parts?.wait].map((part) => drawn(part?.slot)),
      ];
    });
    return JSON.stringify([
      own === undefined ? task.id : { ...own, name: "", cost: 0, costPerDay: 0, target: "", basis: "" },
      task.chance,
      task.chanceAddress,
      drawn(task.duration.slot),
      drawn(task.progress?.remaining?.slot),
      task.links.map((link) => drawn(link.lag.slot)),
      impacts,
      task.holdToPlan ? asWritten.starts[j] : 0,
    ]);
  });
}
