import { tolerance } from "../../calendar/tolerance.ts";
import { addWork } from "../../calendar/workCalendar.ts";
import type { ModelTask } from "../../simulate/model.ts";
import type { BoundKind } from "../types.ts";
import { aloneStart } from "./aloneStart.ts";
import { peopleBounds } from "./peopleBounds.ts";
import type { Placed } from "./placed.ts";

/** One bound of a start in one iteration, by index. */
export interface Bound {
  kind: BoundKind;
  /** `link`: index of the link; `person`, `away`: of the person; otherwise -1. */
  at: number;
  /** Index of the task whose moment it is: the predecessor, or the one that holds the person; -1: none. */
  from: number;
  /** The moment it asks for, lag included. */
  moment: number;
  /** Working days the register then holds the task back. */
  wait: number;
  /** The earliest start it allows alone; negative where it asks for nothing. */
  start: number;
}

/**
 * What keeps task j from starting earlier in iteration k: links in their order, dates, and people where they made it
 * wait. The latest of their starts is the task's start: the ones that bind. A started or finished task has one bound.
 *
 * The rule of placement itself (plan format, "Placement"), bound by bound; where it asks who held a person, the rows
 * of the block answer.
 */
export function boundsOf(placed: Placed, j: number, k: number): Bound[] {
  const { model, block, planned } = placed;
  const task = model.tasks[j] as ModelTask;
  const start = (block.start[j] as Float64Array)[k] as number;
  if (task.progress !== undefined) {
    return [{ kind: "recorded", at: -1, from: -1, moment: start, wait: 0, start }];
  }
  const d = (block.duration[j] as Float64Array)[k] as number;
  const skipped = block.needed[j]?.[k] === 0;
  const wait = skipped ? 0 : (block.wait[j]?.[k] ?? 0);
  const bounds: Bound[] = [];
  const add = (kind: BoundKind, at: number, from: number, moment: number, held: number, toFinish = false) => {
    const late = held > tolerance && moment >= 0 ? addWork(task.ownCalendar, moment, held) : moment;
    const alone = aloneStart(task, d, skipped, late, toFinish);
    bounds.push({ kind, at, from, moment, wait: held > tolerance ? held : 0, start: alone });
  };
  task.links.forEach((link, l) => {
    const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
    const toFinish = link.kind === "finish-to-finish" || link.kind === "start-to-finish";
    const from = (fromFinish ? block.finish[link.from] : block.start[link.from]) as Float64Array;
    const moment = addWork(link.lagCalendar, from[k] as number, lagOf(placed, link, k));
    add("link", l, link.from, moment, wait, toFinish);
  });
  if (!skipped && task.notBefore > 0) add("not-before", -1, -1, task.notBefore, wait);
  if (!skipped && task.holdToPlan && planned !== undefined) {
    add("held-to-plan", -1, -1, planned[j] as number, 0);
  }
  if (model.statusDay !== undefined && model.statusDay >= 0) {
    add("status-date", -1, -1, model.statusDay + 1, 0);
  }
  add("plan-start", -1, -1, 0, wait);
  if (model.limitedPeople && !skipped && d > tolerance && task.holds.length > 0) {
    const free = bounds.reduce((latest, bound) => Math.max(latest, bound.start), 0);
    if (free < start - tolerance) bounds.push(...peopleBounds(placed, j, k, free));
  }
  return bounds;
}

/** Working days of a link's lag in iteration k. */
export function lagOf({ block }: Placed, link: ModelTask["links"][number], k: number): number {
  const drawn = link.lag.slot < 0 ? link.lag.value : (block.draws[link.lag.slot] as Float64Array)[k];
  return (drawn as number) * link.lagScale;
}
