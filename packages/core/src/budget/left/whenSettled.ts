import { dayNumber } from "../../calendar/dates.ts";
import type { Settings } from "../../explain/settings.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Amount, Model, ModelEntry } from "../../simulate/model.ts";

/** Something uncertain, the moment at which it is settled in the plan as written, and what of the model it governs. */
export interface Unsettled {
  id: string;
  kind: "work" | "register";
  /** Days since start. */
  at: number;
  slots: readonly number[];
  entry?: number;
  /** The task whose `chance` it is. */
  needed?: number;
}

/**
 * Everything uncertain in the model, with the moment at which the plan as written has it behind it.
 *
 * A task: its finish (a lag into it: its start). An entry: the end of its window, or the last finish of the tasks it
 * names if that is sooner; without either, the plan's finish. An overhead: the end of its span. A response's cost: its
 * due day. Sorted by that moment, then by id.
 */
export function whenSettled(model: Model, asWritten: AsWritten): Unsettled[] {
  const { start, finish } = asWritten.block;
  const startOf = (j: number) => start[j]?.[0] ?? 0;
  const finishOf = (j: number) => (j < 0 ? asWritten.finish : (finish[j]?.[0] ?? 0));
  const found: Unsettled[] = [];
  const work = (id: string, at: number, amounts: readonly (Amount | undefined)[], needed?: number) => {
    const slots = slotsOf(amounts);
    if (slots.length === 0 && needed === undefined) return;
    found.push({ id, kind: "work", at, slots, ...(needed === undefined ? {} : { needed }) });
  };
  model.tasks.forEach((task, j) => {
    const { duration, cost, costPerDay, progress, chance, links } = task;
    const inDoubt = chance > 0 && chance < 1 && progress === undefined;
    work(task.id, finishOf(j), [duration, progress?.remaining, cost, costPerDay], inDoubt ? j : undefined);
    work(
      task.id,
      startOf(j),
      links.map(({ lag }) => lag),
    );
  });
  for (const { id, perDay, to } of model.overheads) work(id, finishOf(to), [perDay]);
  for (const { id, cost, dueDay } of model.responses) work(id, dueDay, [cost]);
  model.register.forEach((entry, e) => {
    if (entry.fact === 0) return;
    const at = settledAt(model, entry, finishOf);
    if (entry.fact === undefined) found.push({ id: entry.id, kind: "register", at, slots: [], entry: e });
    else {
      const slots = slotsOf(
        entry.impacts.flatMap(({ delay, factor, wait, cost }) => [delay, factor, wait, cost]),
      );
      if (slots.length > 0) found.push({ id: entry.id, kind: "register", at, slots });
    }
  });
  return found.sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

/** Settings that hold all of these as written. */
export function asWrittenFor(model: Model, settled: readonly Unsettled[]): Settings {
  const slots = new Map<number, number>();
  const entries = new Map<number, 0 | 1>();
  const needed = new Map<number, 0 | 1>();
  for (const one of settled) {
    for (const slot of one.slots) slots.set(slot, model.slots[slot]?.asWritten ?? 0);
    if (one.entry !== undefined) entries.set(one.entry, 0);
    if (one.needed !== undefined)
      needed.set(one.needed, (model.tasks[one.needed]?.chance ?? 1) >= 0.5 ? 1 : 0);
  }
  return { slots, entries, needed };
}

function settledAt(model: Model, entry: ModelEntry, finishOf: (j: number) => number): number {
  const tasks = entry.impacts.flatMap((impact) => impact.tasks);
  const last = tasks.reduce((latest, j) => Math.max(latest, finishOf(j)), 0);
  const { plan } = model;
  const written = [...plan.risks, ...plan.assumptions].find(({ id }) => id === entry.id);
  const end = written?.expires === undefined ? undefined : dayNumber(written.expires) - model.startDay + 1;
  const worked = tasks.length === 0 ? finishOf(-1) : last;
  return end === undefined ? worked : tasks.length === 0 ? end : Math.min(end, worked);
}

function slotsOf(amounts: readonly (Amount | undefined)[]): number[] {
  return amounts.flatMap((amount) => (amount === undefined || amount.slot < 0 ? [] : [amount.slot]));
}
