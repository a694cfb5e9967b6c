import { shapeRules } from "../plan/shapes.ts";
import type { Estimate, Task } from "../plan/types.ts";
import { standardise } from "../sampling/shapes/standardise.ts";
import type { Amount, ModelEntry, Slot, TaskImpact } from "./model.ts";

/** Factors below this count as if they could be none, so that a short task times a small factor is no question. */
const leastFactor = 1e-3;

/**
 * Whether a task can come out without a duration in some iteration. It certainly takes time only when its lowest value is
 * above 0 and nothing can shorten it to none: no `chance`, no delay that can be negative, no factor that can be 0.
 */
export function mayBePoint(
  task: Task,
  impacts: readonly TaskImpact[],
  entries: readonly ModelEntry[],
  slots: readonly Slot[],
): boolean {
  const work = task.duration ?? task.effort;
  if (work === undefined || task.chance < 1 || task.onlyIf !== undefined || task.started !== undefined) {
    return true;
  }
  return !(lowest(work) > 0) || impacts.some((at) => mayShorten(at, entries, slots));
}

function mayShorten(at: TaskImpact, entries: readonly ModelEntry[], slots: readonly Slot[]): boolean {
  const entry = entries[at.entry];
  const { delay, factor } = entry?.impacts[at.impact] ?? {};
  if (delay !== undefined && !(at.delayScale >= 0 && least(delay, slots) >= 0)) return true;
  if (factor === undefined) return false;
  return !(least(factor, slots) >= leastFactor && (entry?.scale ?? 1) <= 1);
}

function least({ slot, value }: Amount, slots: readonly Slot[]): number {
  const drawn = slots[slot];
  return drawn === undefined ? value : lowest(drawn.estimate);
}

/** No draw of the estimate is below this, in its own unit; -Infinity where its law has no end. */
function lowest(estimate: Estimate): number {
  if (estimate.kind === "fixed") return estimate.value;
  if (estimate.kind === "outcomes") return Math.min(...estimate.outcomes.map(({ value }) => value));
  const { ends } = shapeRules[estimate.shape];
  if (ends === "above-nought") return Number.MIN_VALUE;
  if (ends === "none") return Number.NEGATIVE_INFINITY;
  return estimate.bounds === "extremes" ? estimate.low : standardise(estimate).shift;
}
