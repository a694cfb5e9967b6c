import { tolerance } from "../../calendar/tolerance.ts";
import type { ModelTask } from "../../simulate/model.ts";
import { type Bound, boundsOf } from "../paths/boundsOf.ts";
import type { Placed } from "../paths/placed.ts";
import { busyUntil } from "./busyUntil.ts";

/**
 * Every bound on the start of task j in iteration k: links and dates, and for each limited person it names until when
 * they had no room for it.
 */
export function whyBounds(placed: Placed, j: number, k: number): Bound[] {
  const { model, block } = placed;
  const task = model.tasks[j] as ModelTask;
  const bounds = boundsOf(placed, j, k).filter(({ kind }) => kind !== "person" && kind !== "away");
  const d = (block.duration[j] as Float64Array)[k] as number;
  if (!model.limitedPeople || task.progress !== undefined || d <= tolerance) return bounds;
  task.holds.forEach((_, h) => {
    const busy = busyUntil(placed, j, h, k);
    if (busy !== undefined) bounds.push(busy);
  });
  return bounds;
}

/** What makes a bound the same one in every iteration: the link, the person, or the kind of date. */
export function boundKey({ kind, at }: Bound): string {
  return kind === "link" ? `link${at}` : kind === "person" || kind === "away" ? `person${at}` : kind;
}
