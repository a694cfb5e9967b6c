import type { WorkCalendar } from "../../../calendar/workCalendar.ts";
import type { Amount, Model, ModelEntry, ModelTask } from "../../../simulate/model.ts";

/**
 * What a model's rows depend on, as texts: the same text, the same row in every iteration, whichever model it is of.
 * Drawn rows are functions of their address (seed, item, purpose, iteration) and of what the draw is looked up in.
 */
export interface Keys {
  /** By slot. */
  slots: string[];
  /** By entry: where it occurs. */
  occurs: string[];
  /** By task: where it is needed; undefined: in every iteration. */
  needed: (string | undefined)[];
  /** By task: its realised duration and its wait. */
  realised: string[];
  /** By task: how it is placed, given those and the tasks it follows. */
  placed: string[];
  /** What the model must have in common with another for the two to be computed on the same rows. */
  shape: string;
}

/** Numbers for calendars and other things that are told apart by being the same object or not. */
export type Numbering = (thing: object | undefined) => number;

export function numbering(): Numbering {
  const known = new Map<object, number>();
  return (thing) => {
    if (thing === undefined) return -1;
    const number = known.get(thing) ?? known.size;
    known.set(thing, number);
    return number;
  };
}

/**
 * @param planned   Starts as written, for tasks that hold to them.
 * @param calendar  Numbers of pooled calendars (poolCalendars.ts).
 */
export function keysOf(model: Model, planned: Float64Array, calendar: Numbering): Keys {
  const slots = slotKeys(model);
  const amount = (at: Amount | undefined): string =>
    at === undefined ? "-" : at.slot < 0 ? `=${at.value}` : (slots[at.slot] ?? "");
  const occurs = model.register.map((entry) => occursKey(model, entry));
  const needed = model.tasks.map((task) =>
    task.chance < 1 ? JSON.stringify([task.chanceAddress, task.chance]) : undefined,
  );
  const realised = model.tasks.map((task, j) =>
    JSON.stringify([
      amount(task.duration),
      task.durationScale,
      task.progress && [
        task.progress.finished,
        task.progress.held,
        amount(task.progress.remaining),
        task.progress.remainingScale,
      ],
      needed[j],
      task.impacts.map((at) => {
        const entry = model.register[at.entry] as ModelEntry;
        const impact = entry.impacts[at.impact];
        return [
          occurs[at.entry],
          entry.scale,
          amount(impact?.factor),
          amount(impact?.delay),
          at.delayScale,
          amount(impact?.wait),
          at.waitScale,
        ];
      }),
    ]),
  );
  const placed = model.tasks.map((task, j) =>
    JSON.stringify([
      task.kind,
      calendar(task.calendar),
      calendar(task.ownCalendar),
      calendar(task.unbroken),
      task.notBefore,
      task.holdToPlan ? planned[j] : null,
      task.statusFloor,
      task.holds,
      task.progress && [task.progress.start, task.progress.finish, task.progress.finished],
      task.links.map((link) => [
        link.from,
        link.kind,
        link.direct,
        amount(link.lag),
        link.lagScale,
        calendar(link.lagCalendar),
      ]),
    ]),
  );
  const shape = JSON.stringify([
    model.startDay,
    model.statusDay,
    model.finishOf,
    model.limitedPeople,
    model.tasks.map(({ id }) => id),
    [...model.order],
    model.people.map(({ id, capacity, partial }) => [id, capacity, partial]),
  ]);
  return { slots, occurs, needed, realised, placed, shape };
}

function slotKeys({ slots, correlated }: Model): string[] {
  const own = slots.map(({ item, purpose, estimate, cut }) => JSON.stringify([item, purpose, estimate, cut]));
  if (correlated === undefined) return own;
  // A correlated draw depends on the draws of the whole set and on the matrix.
  const set = JSON.stringify([[...correlated.slots].map((slot) => own[slot]), [...correlated.factor]]);
  const members = new Set(correlated.slots);
  return own.map((key, slot) => (members.has(slot) ? `${key} ${set}` : key));
}

function occursKey(model: Model, { group, item, lo, hi, fact }: ModelEntry): string {
  return JSON.stringify([
    group < 0 ? null : model.groups[group]?.name,
    group < 0 ? item : null,
    lo,
    hi,
    fact,
  ]);
}

/** Which tasks a model has to compute again after another of the same shape. */
export interface Reach {
  realise: number[];
  place: Uint8Array;
  count: number;
}

/**
 * Tasks whose duration or wait differs, and those to be placed again: these, tasks placed otherwise, everything that
 * follows them by links and, with limited people, tasks placed later that share a person with those.
 */
export function reachBetween(
  before: { model: Model; keys: Keys } | undefined,
  { model, keys }: { model: Model; keys: Keys },
): Reach {
  const all = model.tasks.map((_, j) => j);
  if (before === undefined)
    return { realise: all, place: new Uint8Array(all.length).fill(1), count: all.length };
  const realise = all.filter((j) => keys.realised[j] !== before.keys.realised[j]);
  const changed = new Set(realise);
  const place = new Uint8Array(all.length);
  const busy = new Set<number>();
  let count = 0;
  for (const j of model.order) {
    const task = model.tasks[j] as ModelTask;
    const again =
      changed.has(j) ||
      keys.placed[j] !== before.keys.placed[j] ||
      task.links.some((link) => place[link.from] === 1) ||
      (model.limitedPeople && task.holds.some((hold) => busy.has(hold.person)));
    if (!again) continue;
    place[j] = 1;
    count++;
    for (const hold of [...task.holds, ...(before.model.tasks[j]?.holds ?? [])]) busy.add(hold.person);
  }
  return { realise, place, count };
}

/** Calendars a model's placing looks at. */
export function calendarsOf(model: Model): WorkCalendar[] {
  return model.tasks.flatMap((task) => [
    task.calendar,
    task.ownCalendar,
    ...(task.unbroken === undefined ? [] : [task.unbroken]),
    ...task.links.map((link) => link.lagCalendar),
  ]);
}
