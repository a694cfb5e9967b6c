import type { Model } from "../simulate/model.ts";

/** What a re-run changes, on the same draws. Slots, entries and tasks by their index in the model. */
export interface Settings {
  /** Slot held at this value, in its written unit. */
  slots?: ReadonlyMap<number, number>;
  /** Register entry made to occur (1) or not (0). */
  entries?: ReadonlyMap<number, 0 | 1>;
  /** Task made needed (1) or not (0). */
  needed?: ReadonlyMap<number, 0 | 1>;
  /** People without limits; tasks that hold to the plan keep the starts of the plan as written, limits respected. */
  people?: false;
}

/** What is set differently between two re-runs. */
export interface Difference {
  slots: ReadonlySet<number>;
  entries: ReadonlySet<number>;
  needed: ReadonlySet<number>;
  people: boolean;
}

/** The slots, entries and tasks on which two settings differ, in either direction. */
export function difference(a: Settings, b: Settings): Difference {
  return {
    slots: differing(a.slots, b.slots),
    entries: differing(a.entries, b.entries),
    needed: differing(a.needed, b.needed),
    people: a.people !== b.people,
  };
}

function differing<V>(
  a: ReadonlyMap<number, V> | undefined,
  b: ReadonlyMap<number, V> | undefined,
): ReadonlySet<number> {
  const at = new Set<number>();
  for (const [index, value] of a ?? []) if (b?.get(index) !== value) at.add(index);
  for (const [index, value] of b ?? []) if (a?.get(index) !== value) at.add(index);
  return at;
}

/** Which tasks anything in a model can reach. */
export interface Reach {
  /** Tasks whose own duration, wait or need the difference changes. */
  changed: number[];
  /** 1 for tasks to be placed again: those, tasks whose lags change, and all that can move with them. */
  placed: Uint8Array;
  /** How many of them. */
  count: number;
  /** Tasks whose own cost the difference changes. */
  priced: number[];
}

/** Tasks by what changes them: slots and entries, by index. */
export interface Touches {
  durations: Map<number, number[]>;
  lags: Map<number, number[]>;
  costs: Map<number, number[]>;
  entries: Map<number, number[]>;
}

/** Which tasks each slot and entry of a model touches. Made once per model. */
export function touchesOf(model: Model): Touches {
  const touches: Touches = { durations: new Map(), lags: new Map(), costs: new Map(), entries: new Map() };
  const add = (to: Map<number, number[]>, at: number | undefined, task: number) => {
    if (at === undefined || at < 0) return;
    const known = to.get(at);
    if (known === undefined) to.set(at, [task]);
    else if (known[known.length - 1] !== task) known.push(task);
  };
  model.tasks.forEach((task, j) => {
    add(touches.durations, task.duration.slot, j);
    add(touches.durations, task.progress?.remaining?.slot, j);
    add(touches.costs, task.cost.slot, j);
    add(touches.costs, task.costPerDay.slot, j);
    for (const link of task.links) add(touches.lags, link.lag.slot, j);
    for (const at of task.impacts) {
      const impact = model.register[at.entry]?.impacts[at.impact];
      if ((impact?.delay ?? impact?.factor ?? impact?.wait) === undefined) continue;
      add(touches.entries, at.entry, j);
      for (const part of [impact?.delay, impact?.factor, impact?.wait]) add(touches.durations, part?.slot, j);
    }
  });
  return touches;
}

/**
 * What has to be computed again where settings differ: the tasks the difference touches, everything that follows
 * them by links, and, with limited people, tasks placed later that share a person with those.
 *
 * @param limited  Whether people are limited in the run to be computed.
 */
export function reachOf(model: Model, touches: Touches, differs: Difference, limited: boolean): Reach {
  const changed = new Set<number>(differs.needed);
  const seeds = new Set<number>();
  const priced = new Set<number>();
  for (const slot of differs.slots) {
    for (const j of touches.durations.get(slot) ?? []) changed.add(j);
    for (const j of touches.lags.get(slot) ?? []) seeds.add(j);
    for (const j of touches.costs.get(slot) ?? []) priced.add(j);
  }
  for (const entry of differs.entries) for (const j of touches.entries.get(entry) ?? []) changed.add(j);
  const placed = new Uint8Array(model.tasks.length);
  for (const j of seeds) placed[j] = 1;
  for (const j of changed) {
    placed[j] = 1;
    priced.add(j);
  }
  const busy = new Set<number>();
  let count = 0;
  for (const j of model.order) {
    const task = model.tasks[j];
    if (task === undefined) continue;
    if (
      (differs.people && task.holds.length > 0) ||
      task.links.some((link) => placed[link.from] === 1) ||
      (limited && task.holds.some((hold) => busy.has(hold.person)))
    ) {
      placed[j] = 1;
    }
    if (placed[j] === 0) continue;
    count++;
    for (const hold of task.holds) busy.add(hold.person);
  }
  return { changed: [...changed], placed, count, priced: [...priced] };
}
