import type { Plan } from "../../plan/types.ts";
import type { Model } from "../../simulate/model.ts";
import type { Settings } from "../settings.ts";
import type { CauseKind } from "../types.ts";

/** Something that makes the plan turn out otherwise than written, and what of the model it governs. */
export interface Cause {
  id: string;
  name: string;
  kind: CauseKind;
  /** Ids of the minor causes gathered in it. */
  gathers?: string[];
  /** Ids of the tasks whose estimates a shared cause moves. */
  members?: string[];
  slots: readonly number[];
  entries: readonly number[];
  /** Tasks whose `chance` it is. */
  needed: readonly number[];
  /** Limited people: the waiting for each other beyond what the plan as written already holds. */
  people: boolean;
}

/**
 * Everything in a model that is not as written in every iteration, each thing in exactly one cause: the spread of
 * each task (its duration, effort or remaining work, cost, cost per day, lags into it, whether it is needed), of each
 * overhead, of each adopted response's cost, of what an entry that has occurred costs; each set of estimates that are
 * correlated, as one cause of its own; each open risk and assumption; limited people.
 *
 * Left out: what touches neither finish nor cost (what lateness costs, benefits), and what an entry that may occur
 * would do, which is part of that entry. In id order, kind by kind.
 */
export function causesOf(model: Model): Cause[] {
  const shared = sharedCauses(model);
  const taken = new Set(shared.flatMap((cause) => cause.slots));
  const spread = (
    id: string,
    name: string,
    slots: readonly number[],
    needed: readonly number[] = [],
  ): Cause => ({
    id,
    name,
    kind: "spread",
    slots: slots.filter((slot) => slot >= 0 && !taken.has(slot)),
    entries: [],
    needed,
    people: false,
  });
  const spreads = [
    ...model.tasks.map((task, j) =>
      spread(task.id, task.name, taskSlots(model, j), task.chance > 0 && task.chance < 1 ? [j] : []),
    ),
    ...model.overheads.map(({ id, name, perDay }) => spread(id, name, [perDay.slot])),
    ...model.responses.map(({ id, name, cost }) => spread(id, name, [cost.slot])),
    ...model.register
      .filter((entry) => entry.fact === 1)
      .map((entry) =>
        spread(
          entry.id,
          entry.name,
          entry.impacts.flatMap(({ delay, factor, wait, cost }) =>
            [delay, factor, wait, cost].map((part) => part?.slot ?? -1),
          ),
        ),
      ),
  ];
  const entries = model.register.flatMap((entry, e): Cause[] =>
    entry.fact === undefined
      ? [
          {
            id: entry.id,
            name: entry.name,
            kind: entry.kind,
            slots: [],
            entries: [e],
            needed: [],
            people: false,
          },
        ]
      : [],
  );
  const people: Cause[] = model.limitedPeople
    ? [
        {
          id: "people",
          name: "Limited people",
          kind: "people",
          slots: [],
          entries: [],
          needed: [],
          people: true,
        },
      ]
    : [];
  return [
    ...spreads.filter((cause) => cause.slots.length + cause.needed.length > 0),
    ...shared,
    ...entries.filter((entry) => entry.kind === "risk"),
    ...entries.filter((entry) => entry.kind === "assumption"),
    ...people,
  ];
}

/** Slots of the estimates written at a task, -1 for certain ones. */
export function taskSlots(model: Model, j: number): number[] {
  const task = model.tasks[j];
  if (task === undefined) return [];
  return [
    task.duration.slot,
    task.progress?.remaining?.slot ?? -1,
    task.cost.slot,
    task.costPerDay.slot,
    ...task.links.map((link) => link.lag.slot),
  ];
}

/** Settings that hold everything as written but the causes that are on. */
export function settingsWith(
  model: Model,
  causes: readonly Cause[],
  on: (cause: number) => boolean,
): Settings {
  const slots = new Map<number, number>();
  const entries = new Map<number, 0 | 1>();
  const needed = new Map<number, 0 | 1>();
  let people = true;
  causes.forEach((cause, c) => {
    if (on(c)) return;
    for (const slot of cause.slots) slots.set(slot, model.slots[slot]?.asWritten ?? 0);
    for (const entry of cause.entries) entries.set(entry, 0);
    for (const j of cause.needed) needed.set(j, (model.tasks[j]?.chance ?? 1) >= 0.5 ? 1 : 0);
    if (cause.people) people = false;
  });
  return { slots, entries, needed, ...(people ? {} : { people: false as const }) };
}

/** Causes as one, under a name of their own. */
export function gathered(id: string, name: string, kind: CauseKind, causes: readonly Cause[]): Cause {
  return {
    id,
    name,
    kind,
    gathers: causes.map((cause) => cause.id),
    slots: causes.flatMap((cause) => cause.slots),
    entries: causes.flatMap((cause) => cause.entries),
    needed: causes.flatMap((cause) => cause.needed),
    people: causes.some((cause) => cause.people),
  };
}

/** Correlated estimates, set by set; sets that share a member are one. */
function sharedCauses(model: Model): Cause[] {
  if (model.correlated === undefined) return [];
  const kept = new Map<string, number>();
  for (const slot of model.correlated.slots) kept.set(nameOfSlot(model, slot), slot);
  const components: { members: Set<string>; causes: Set<string> }[] = [];
  for (const { between, cause, coefficient } of byMembers(model.plan.correlations)) {
    const members = new Set(between.filter((name) => kept.has(name)));
    if (members.size < 2 || coefficient === 0) continue;
    const causes = new Set(cause === undefined ? [] : [cause]);
    for (let i = components.length - 1; i >= 0; i--) {
      const other = components[i];
      if (other === undefined || ![...other.members].some((name) => members.has(name))) continue;
      for (const name of other.members) members.add(name);
      for (const text of other.causes) causes.add(text);
      components.splice(i, 1);
    }
    components.push({ members, causes });
  }
  const names = new Map(model.tasks.map((task) => [task.id, task.name]));
  return components
    .map(({ members, causes }): Cause => {
      const sorted = [...members].sort();
      const ids = [...new Set(sorted.map((name) => name.replace(/^cost:/, "")))];
      return {
        id: `cause:${sorted[0] ?? ""}`,
        name:
          causes.size > 0
            ? [...causes].sort().join("; ")
            : `What moves together: ${ids.map((id) => names.get(id) ?? id).join(", ")}`,
        kind: "cause",
        members: ids,
        slots: sorted.map((name) => kept.get(name) as number), // members are those kept
        entries: [],
        needed: [],
        people: false,
      };
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** In an order that does not depend on the file's. */
function byMembers(sets: Plan["correlations"]): Plan["correlations"] {
  const key = ({ between }: Plan["correlations"][number]) => [...between].sort().join(" ");
  return [...sets].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** A correlated slot as the plan names it: the task's id, or `cost:` and the id. */
function nameOfSlot(model: Model, slot: number): string {
  const key = model.slots[slot]?.key ?? "";
  const id = key.slice(0, key.indexOf(":"));
  return key.endsWith(":cost") ? `cost:${id}` : id;
}
