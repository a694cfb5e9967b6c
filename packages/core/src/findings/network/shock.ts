import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import { newBlock, undrawnKernel } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import { fillAsWritten } from "../../simulate/draws.ts";
import { newCapacity } from "../../simulate/people.ts";
import { place } from "../../simulate/place.ts";
import { realise } from "../../simulate/realise.ts";
import type { CheckContext, PlacedTask } from "../context.ts";
import type { Written, WrittenTask } from "./written.ts";

/** Placements of a task that are tried at most: with a thousand tasks, two hundred of those that set the finish. */
const MOST = 200_000;

/**
 * Unfinished work that sets the finish as written, in the order of the document: all of it, or in a large plan the
 * longest.
 */
export function drivingWork({ work, written }: CheckContext): (PlacedTask & { at: WrittenTask })[] {
  const driving = work.flatMap((each) => {
    const at = written?.tasks.get(each.task.id);
    return at?.driving === true && at.duration > tolerance ? [{ ...each, at }] : [];
  });
  const most = Math.max(20, Math.floor(MOST / (written?.model.tasks.length ?? 1)));
  if (driving.length <= most) return driving;
  const longest = [...driving].sort(
    (a, b) => b.at.duration - a.at.duration || (a.task.id < b.task.id ? -1 : 1),
  );
  const kept = new Set(longest.slice(0, most));
  return driving.filter((each) => kept.has(each));
}

/**
 * Working days of the plan's calendar by which the finish as written moves when one task takes `days` working days more
 * (or less: it never takes less than none). Undefined where the plan would then run past what calendars cover.
 */
export function shockedBy({ model, asWritten }: Written): (at: number, days: number) => number | undefined {
  const block = newBlock(model, 1, undrawnKernel(model, 1));
  return (at, days) => {
    fillAsWritten(model, block);
    realise(model, block);
    const row = block.duration[at] as Float64Array;
    row[0] = Math.max(0, (row[0] as number) + days);
    const capacity = model.limitedPeople ? newCapacity(model) : undefined;
    if (place(model, block, asWritten.starts, capacity) >= 0) return undefined;
    markFinish(model, block);
    return workAt(model.planCalendar, block.planFinish[0] as number) - asWritten.workingDays;
  };
}
