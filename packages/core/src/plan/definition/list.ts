import type { Node } from "../source/node.ts";
import type { Place } from "../source/place.ts";
import type { Type } from "./type.ts";

/**
 * A list; where it has one item the item may stand alone.
 *
 * @param min  Fewest items (default 0).
 */
export function listOf<D>(item: Type<D>, min = 0): Type<D[]> {
  return {
    what: `a list, each item ${item.what}`,
    read(place, reading) {
      const { node } = place;
      const alone = node.kind !== "list";
      const nodes: readonly Node[] = alone ? [node] : node.items;
      const result: D[] = [];
      for (const [index, each] of nodes.entries()) {
        const at: Place = alone ? place : { parent: place, key: index, keyAt: each.at, node: each };
        const draft = item.read(at, reading);
        if (draft !== undefined) result.push(draft);
      }
      if (nodes.length < min) {
        const rule = min === 1 ? "At least one item belongs here." : `At least ${min} items belong here.`;
        reading.report(place, "too-few", rule, `Add ${item.what}.`);
      }
      return result;
    },
    schema(definitions) {
      const items = item.schema(definitions);
      const list = { type: "array", items, ...(min > 0 && { minItems: min }) };
      return min > 1 ? list : { anyOf: [items, list] };
    },
  };
}
