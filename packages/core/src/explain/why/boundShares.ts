import { tolerance } from "../../calendar/tolerance.ts";
import type { Bound } from "../paths/boundsOf.ts";
import type { Placed } from "../paths/placed.ts";
import { boundKey, whyBounds } from "./whyBounds.ts";

/** How often a bound set the start, one of its bounds (for its names), and behind which tasks, by index. */
export interface BoundCount {
  count: number;
  bound: Bound;
  behind: Map<number, number>;
}

/** Counts, over the iterations of a placed block, which bounds of task j set its start; ties count on each. */
export function countBounds(placed: Placed, j: number, counts: Map<string, BoundCount>): void {
  const { block } = placed;
  const starts = block.start[j] as Float64Array;
  for (let k = 0; k < block.n; k++) {
    for (const bound of whyBounds(placed, j, k)) {
      if (bound.start < (starts[k] as number) - tolerance) continue;
      const key = boundKey(bound);
      let known = counts.get(key);
      if (known === undefined) {
        known = { count: 0, bound, behind: new Map() };
        counts.set(key, known);
      }
      known.count++;
      if (bound.kind !== "person") continue;
      known.behind.set(bound.from, (known.behind.get(bound.from) ?? 0) + 1);
    }
  }
}
