import type { Node } from "./node.ts";

/** Any value JSON has a form for. */
export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };

/** The JSON value of a node, on objects without a prototype (so that `__proto__` is a key like any other). */
export function toJson(node: Node): Json {
  if (node.kind === "scalar") return node.value;
  if (node.kind === "list") return node.items.map(toJson);
  const result: { [key: string]: Json } = Object.create(null);
  for (const { key, node: value } of node.entries.values()) result[key] = toJson(value);
  return result;
}
