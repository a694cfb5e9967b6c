import type { Node } from "./node.ts";

/** Any value JSON has a form for. */
export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };

/**
 * Objects in which `__proto__` is a key like any other. An object that has no prototype of its own at all is kept as a
 * hash table by engines, which takes several times the memory and time of a plan's thousands of small objects.
 */
function Bare(): void {}
Bare.prototype = Object.freeze(Object.create(null));
const newBare = Bare as unknown as new () => { [key: string]: Json };

/** The JSON value of a node, `__proto__` being a key like any other. */
export function toJson(node: Node): Json {
  if (node.kind === "scalar") return node.value;
  if (node.kind === "list") return node.items.map(toJson);
  const result: { [key: string]: Json } = new newBare();
  for (const { key, node: value } of node.entries.values()) result[key] = toJson(value);
  return result;
}
