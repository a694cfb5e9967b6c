import { tolerance } from "../../calendar/tolerance.ts";
import type { Bound } from "./boundsOf.ts";
import { boundsOf } from "./boundsOf.ts";
import type { Placed } from "./placed.ts";

const dates = ["not-before", "held-to-plan", "status-date", "recorded", "plan-start"];

/**
 * The bounds that hold task j where it starts in iteration k, the one its driving path follows first: of several that
 * ask for the same start, those of critical tasks before others, links before people before dates, then in the order
 * of the links' and people's ids.
 */
export function bindingBounds(
  placed: Placed,
  j: number,
  k: number,
  bounds = boundsOf(placed, j, k),
): Bound[] {
  const { model, block } = placed;
  const start = (block.start[j] as Float64Array)[k] as number;
  const rank = (bound: Bound): number => {
    if (bound.from < 0) return bound.kind === "away" ? 4 : 5 + dates.indexOf(bound.kind);
    const finished = model.tasks[bound.from]?.progress?.finished === true;
    const critical = !finished && block.pushed[bound.from]?.[k] === 1;
    return (critical ? 0 : 2) + (bound.kind === "link" ? 0 : 1);
  };
  // The latest of them is the start, to the last digits of a sum.
  const latest = bounds.reduce((most, bound) => Math.max(most, bound.start), 0);
  return bounds
    .filter((bound) => bound.start >= Math.min(start, latest) - tolerance)
    .map((bound) => ({ bound, rank: rank(bound) }))
    .sort((a, b) => a.rank - b.rank || a.bound.at - b.bound.at || a.bound.from - b.bound.from)
    .map(({ bound }) => bound);
}
