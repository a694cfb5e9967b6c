import type { Id } from "../../../plan/types.ts";

interface Item {
  id: Id;
  was?: Id;
}

/**
 * Which items of an old plan are which of the new one: by id, and by `was` where one was renamed. Each is matched
 * once; what has the same id and the same draws comes first.
 *
 * @returns old id to new item, for matched items
 */
export function matchIds<T extends Item>(older: readonly Item[], newer: readonly T[]): Map<Id, T> {
  const free = new Map(older.map((item) => [item.id, item]));
  const open = new Set(newer);
  const matched = new Map<Id, T>();
  const drawId = (item: Item) => item.was ?? item.id;
  const take = (find: (item: T) => Id | undefined) => {
    for (const item of newer) {
      if (!open.has(item)) continue;
      const id = find(item);
      if (id === undefined || !free.has(id)) continue;
      free.delete(id);
      open.delete(item);
      matched.set(id, item);
    }
  };
  const sameDraws = (of: Id | undefined) => {
    for (const old of free.values()) if (drawId(old) === of) return old.id;
    return undefined;
  };
  take((item) => {
    const old = free.get(item.id);
    return old !== undefined && drawId(old) === drawId(item) ? old.id : undefined;
  });
  take((item) => (item.was === undefined ? item.id : undefined));
  take((item) => (item.was !== undefined && free.has(item.was) ? item.was : undefined));
  take((item) => (item.was === undefined ? undefined : sameDraws(item.was)));
  take((item) => (item.was === undefined ? sameDraws(item.id) : undefined));
  take((item) => item.id);
  return matched;
}
