import type { Node } from "./node.ts";

/** A node and the way to it. A single item standing in for a list has its list's place. */
export interface Place {
  parent?: Place;
  key?: string | number;
  /** Offset of the key, for problems with the key itself. */
  keyAt: number;
  node: Node;
}

/** The place of a key's value, or the object itself where the key is not there. */
export function childPlace(place: Place, key: string): Place {
  const entry = place.node.kind === "map" ? place.node.entries.get(key) : undefined;
  return entry === undefined ? place : { parent: place, key, keyAt: entry.keyAt, node: entry.node };
}

/** Longer keys are cut short in a path: there are none in the format. */
const LONGEST = 60;

/** Writes a place as a path: `tasks[3].after[0]`. */
export function pathText(place: Place): string {
  const parts: string[] = [];
  for (let p: Place | undefined = place; p !== undefined; p = p.parent) {
    if (typeof p.key === "number") parts.push(`[${p.key}]`);
    else if (p.key !== undefined) {
      const key = p.key.length > LONGEST ? `${p.key.slice(0, LONGEST)}...` : p.key;
      const plain = /^[\p{L}\p{N}_-]+(?:\.\.\.)?$/u.test(key);
      const dot = p.parent?.key === undefined ? "" : ".";
      parts.push(plain ? `${dot}${key}` : `[${JSON.stringify(key)}]`);
    }
  }
  return parts.reverse().join("");
}
