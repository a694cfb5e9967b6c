import type { Model, ModelLink, ModelTask } from "./model.ts";

/** A task that may hold a person while another, placed later, wants the same one. */
export interface Rival {
  task: number;
  share: number;
}

/**
 * By task and hold: tasks placed before it that share the person and may still be going when it starts. Tasks that it
 * follows by links from finish to start are left out: they have always ended by then.
 *
 * Cost: tasks^2 / 8 bytes, and a few steps a pair that shares a person; once a model.
 */
export function rivalsOf(model: Model): Rival[][][] {
  const known = cache.get(model);
  if (known !== undefined) return known;
  const before = ancestorsOf(model);
  const held: Rival[][] = model.people.map(() => []);
  const rivals: Rival[][][] = model.tasks.map(() => []);
  for (const j of model.order) {
    const { holds, progress } = model.tasks[j] as ModelTask;
    rivals[j] = holds.map(({ person }) =>
      (held[person] as Rival[]).filter(({ task }) => !has(before[j] as Uint32Array, task)),
    );
    // A finished task holds nobody any more.
    if (progress?.finished === true) continue;
    for (const { person, share } of holds) held[person]?.push({ task: j, share });
  }
  cache.set(model, rivals);
  return rivals;
}

const cache = new WeakMap<Model, Rival[][][]>();
const ancestorCache = new WeakMap<Model, Uint32Array[]>();

function ancestorsOf(model: Model): Uint32Array[] {
  let sets = ancestorCache.get(model);
  if (sets === undefined) {
    sets = ancestors(model);
    ancestorCache.set(model, sets);
  }
  return sets;
}

/** Whether task i has ended whenever task j starts, by links from finish to start alone. */
export function precedes(model: Model, i: number, j: number): boolean {
  return has(ancestorsOf(model)[j] as Uint32Array, i);
}

/** By task: the tasks that have ended whenever it starts, as bits. */
function ancestors(model: Model): Uint32Array[] {
  const words = Math.ceil(model.tasks.length / 32);
  const sets: Uint32Array[] = [];
  for (const j of model.order) {
    const own = new Uint32Array(words);
    sets[j] = own;
    const { links, progress } = model.tasks[j] as ModelTask;
    // A task that has started stands where it does whatever comes before it, and is placed first.
    if (progress !== undefined) continue;
    for (const link of links) {
      if (!holdsBack(link)) continue;
      own[link.from >> 5] = (own[link.from >> 5] as number) | (1 << (link.from & 31));
      const further = sets[link.from] as Uint32Array;
      for (let w = 0; w < words; w++) own[w] = (own[w] as number) | (further[w] as number);
    }
  }
  return sets;
}

function has(set: Uint32Array, task: number): boolean {
  return ((set[task >> 5] as number) & (1 << (task & 31))) !== 0;
}

/** Whether the successor never starts before the predecessor has ended. */
function holdsBack({ kind, direct, lag, lagScale }: ModelLink): boolean {
  return kind === "finish-to-start" && (direct || (lag.slot < 0 && lag.value * lagScale >= 0));
}
