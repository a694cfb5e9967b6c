import type { Job } from "./job.ts";
import {
  boundsOf,
  earliest,
  factPosition,
  type Holder,
  holders,
  type Position,
  type World,
} from "./place.ts";
import { momentLater, nextWorkingMoment, TOLERANCE } from "./time.ts";

/** How far a task is pushed, in working days: far above the tolerance, far below any slack worth the name. */
const PUSH = 1e-6;

/** The plan's finish: that of `finishOf`, else the latest of any needed task. */
export function planFinish(world: World, at: Map<string, Position>): number {
  const { finishOf } = world.plan.commitment;
  if (finishOf !== undefined) return at.get(finishOf)?.finish ?? 0;
  let finish = 0;
  for (const [id, job] of world.jobs) if (job.needed) finish = Math.max(finish, at.get(id)?.finish ?? 0);
  return finish;
}

/** Where one job stands once it is pushed that little bit later. */
function pushed(job: Job, { start }: Position): Position {
  const who = job.task.id;
  if (job.point) {
    const moment = momentLater(job.ownDays, start, PUSH, who);
    return { start: moment, finish: moment };
  }
  const moved = nextWorkingMoment(job.works, momentLater(job.works, start, PUSH, who), who);
  return { start: moved, finish: momentLater(job.works, moved, job.duration, who) };
}

/**
 * Ids of the critical tasks, by brute force. Each candidate is pushed a moment later; every other task is
 * then moved, only ever later, until links, bounds and people are satisfied again. The order of people's
 * work stays: a task yields only to those that were at work before it (earlier start; equal starts in the
 * order of placing). What is started stands before `statusDate`, so before everything ahead. Critical: the plan's finish has moved.
 */
export function criticalTasks(world: World, baseline: Map<string, Position>): Set<string> {
  const sequence = [...baseline.keys()];
  const order = sequence
    .map((id, rank) => ({ id, rank, start: baseline.get(id)?.start ?? 0 }))
    .sort((a, b) => {
      return Math.abs(a.start - b.start) <= TOLERANCE ? a.rank - b.rank : a.start - b.start;
    })
    .map(({ id }) => id);
  const finish = planFinish(world, baseline);
  const critical = new Set<string>();
  for (const [id, job] of world.jobs) {
    if (!job.needed || job.state === "finished") continue;
    if (planFinish(world, settle(world, baseline, order, id)) > finish + PUSH / 10) critical.add(id);
  }
  return critical;
}

/** All positions after `pushedId` is pushed and the rest has given way. */
function settle(world: World, baseline: Map<string, Position>, order: string[], pushedId: string) {
  const at = new Map(baseline);
  const position = (id: string): Position => {
    const found = at.get(id);
    if (!found) throw new Error(`${id} is not placed`);
    return found;
  };
  const first = world.jobs.get(pushedId);
  if (!first) throw new Error(`no task ${pushedId}`);
  const floor = pushed(first, position(pushedId));
  at.set(pushedId, first.state === "started" ? factPosition(first, floor.start) : floor);
  for (let round = 0; ; round++) {
    if (round > 1000) throw new Error(`pushing ${pushedId} does not settle`);
    let moved = false;
    for (const [rank, id] of order.entries()) {
      const job = world.jobs.get(id);
      if (job?.state !== "ahead") continue;
      const before = new Set(order.slice(0, rank));
      const others: Holder[] = holders(at, world.jobs).filter((h) => before.has(h.job.task.id));
      const now = position(id);
      const next = earliest(world, job, boundsOf(world, job, position), others, now.start);
      if (next.start > now.start + TOLERANCE) {
        at.set(id, next);
        moved = true;
      }
    }
    if (!moved) return at;
  }
}
