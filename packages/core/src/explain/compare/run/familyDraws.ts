import type { Kernel } from "../../../kernel/index.ts";
import type { Block } from "../../../simulate/block.ts";
import { type Draws, draws } from "../../../simulate/draws.ts";
import { constant, type Model, type ModelEntry, type ModelTask, type Slot } from "../../../simulate/model.ts";
import type { Draw } from "../../variants.ts";
import type { Keys } from "./keys.ts";

/** Rows of everything that models of a family draw: each thing drawn once, whoever reads it. */
export interface FamilyDraws {
  slot(key: string): Float64Array;
  occurs(key: string): Uint8Array;
  needed(key: string): Uint8Array;
  /** Draws block `b` for all of them. */
  fill(b: number, n: number): void;
}

/** What a family draws, before there is memory for it. */
export interface FamilyPlan {
  /** Models of nothing but draws, to have them drawn by the one function that draws. */
  parts: { model: Model; slots: string[]; entries: string[]; tasks: string[] }[];
  /** Slots in all. */
  slots: number;
  entries: number;
  tasks: number;
}

export function familyPlan(members: readonly { model: Model; keys: Keys }[]): FamilyPlan {
  const [first] = members;
  const parts: FamilyPlan["parts"] = [];
  if (first === undefined) return { parts, slots: 0, entries: 0, tasks: 0 };
  const seen = new Set<string>();
  const slots = new Map<string, Slot>();
  const entries = new Map<string, { entry: ModelEntry; group: string | undefined }>();
  const tasks = new Map<string, ModelTask>();
  const bare = { ...first.model, slots: [], register: [], groups: [], tasks: [], correlated: undefined };

  for (const { model, keys } of members) {
    const correlated = new Set(model.correlated?.slots);
    if (model.correlated !== undefined) {
      const own = [...model.correlated.slots].map((slot) => keys.slots[slot] ?? "");
      if (!seen.has(own[0] ?? "")) {
        for (const key of own) seen.add(key);
        const set = [...model.correlated.slots].map((slot) => model.slots[slot] as Slot);
        const { factor } = model.correlated;
        parts.push({
          model: { ...bare, slots: set, correlated: { slots: Int32Array.from(set, (_, i) => i), factor } },
          slots: own,
          entries: [],
          tasks: [],
        });
      }
    }
    model.slots.forEach((slot, s) => {
      if (!correlated.has(s)) slots.set(keys.slots[s] ?? "", slot);
    });
    model.register.forEach((entry, e) => {
      entries.set(keys.occurs[e] ?? "", { entry, group: model.groups[entry.group]?.name });
    });
    model.tasks.forEach((task, j) => {
      const key = keys.needed[j];
      if (key !== undefined) tasks.set(key, task);
    });
  }
  const groups = [...new Set([...entries.values()].map(({ group }) => group))]
    .filter((name) => name !== undefined)
    .sort();
  parts.push({
    model: {
      ...bare,
      slots: [...slots.values()],
      groups: groups.map((name) => ({ name })),
      register: [...entries.values()].map(({ entry, group }) => ({
        ...entry,
        group: group === undefined ? -1 : groups.indexOf(group),
      })),
      // Only whether they are needed is drawn of tasks here.
      tasks: [...tasks.values()].map((task) => ({ ...task, duration: constant(0), impacts: [], links: [] })),
    },
    slots: [...slots.keys()],
    entries: [...entries.keys()],
    tasks: [...tasks.keys()],
  });
  return {
    parts,
    slots: parts.reduce((sum, part) => sum + part.slots.length, 0),
    entries: entries.size,
    tasks: tasks.size,
  };
}

/** @param frame  A block whose scratch rows drawing may use. */
export function familyDraws(
  plan: FamilyPlan,
  draw: Draw,
  kernel: Kernel,
  size: number,
  frame: Block,
): FamilyDraws {
  const slots = new Map<string, Float64Array>();
  const occurs = new Map<string, Uint8Array>();
  const needed = new Map<string, Uint8Array>();
  const sources: { source: Draws; block: Block }[] = plan.parts.map((part) => {
    const rows = kernel.arena.rows(part.slots.length, size);
    const events = kernel.arena.bytes(part.entries.length, size);
    const needs = kernel.arena.bytes(part.tasks.length, size);
    part.slots.forEach((key, i) => {
      slots.set(key, rows[i] as Float64Array);
    });
    part.entries.forEach((key, i) => {
      occurs.set(key, events[i] as Uint8Array);
    });
    part.tasks.forEach((key, i) => {
      needed.set(key, needs[i] as Uint8Array);
    });
    return {
      source: draws(part.model, draw.seed, draw.design),
      block: { ...frame, draws: rows, occurs: events, needed: needs },
    };
  });
  const rowOf = <T>(rows: ReadonlyMap<string, T>, key: string): T => {
    const row = rows.get(key);
    if (row === undefined) throw new Error("a row nobody asked to be drawn"); // `familyPlan` saw every model
    return row;
  };
  return {
    slot: (key) => rowOf(slots, key),
    occurs: (key) => rowOf(occurs, key),
    needed: (key) => rowOf(needed, key),
    fill(b, n) {
      for (const { source, block } of sources) {
        block.n = n;
        source.fill(b, block);
      }
    },
  };
}
