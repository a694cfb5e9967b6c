import type { Link, Plan } from "../../packages/core/src/plan/types.ts";
import { dayNumber } from "./dates.ts";
import { inDays, type Job } from "./job.ts";
import type { Realisation } from "./realisation.ts";
import { tails } from "./tails.ts";
import {
  type DayTest,
  momentEarlier,
  momentLater,
  nextWorkingMoment,
  snap,
  TOLERANCE,
  workBetween,
} from "./time.ts";
import { calendarDays, capacityOn } from "./workdays.ts";

/** Where a task stands. */
export interface Position {
  start: number;
  finish: number;
}

/** One iteration's jobs and what is needed to place them. */
export interface World {
  plan: Plan;
  realisation: Realisation;
  jobs: Map<string, Job>;
  /** Starts in the plan as written, for `holdToPlan`; empty while that plan itself is placed. */
  plannedStarts: Map<string, number>;
}

/** A job with its position, as one that may hold people. */
export interface Holder extends Position {
  job: Job;
}

/** The day after `statusDate`: before it, nothing unstarted starts. Day 0 without a status date. */
export function firstFreeDay(plan: Plan): number {
  return plan.statusDate === undefined ? 0 : Math.max(0, dayNumber(plan.start, plan.statusDate) + 1);
}

/** The moment a link asks for, its lag counted from `from`; never earlier than the plan's start. */
function linkMoment(world: World, job: Job, link: Link, from: number): number {
  const { plan, realisation } = world;
  const calendar = link.lagCalendar ?? job.task.calendar;
  const lag = inDays(
    plan,
    link.lag,
    realisation.value(`${job.task.id}:lag:${link.task}:${link.link}`),
    calendar,
  );
  const days: DayTest = link.lagCalendar ? calendarDays(plan, link.lagCalendar) : job.ownDays;
  const moment = lag >= 0 ? momentLater(days, from, lag, job.task.id) : momentEarlier(days, from, -lag);
  return Math.max(0, moment);
}

/**
 * The latest bounds of a job that is not yet started: `start` it may not start before, `finish` it may not
 * finish before (0: none). `at` gives the positions of its predecessors.
 */
export function boundsOf(world: World, job: Job, at: (id: string) => Position) {
  const { plan, plannedStarts } = world;
  const { task } = job;
  let start = 0;
  let finish = 0;
  for (const link of task.after) {
    const pred = at(link.task);
    const fromStart = link.link === "start-to-start" || link.link === "start-to-finish";
    const moment = linkMoment(world, job, link, fromStart ? pred.start : pred.finish);
    if (link.link === "finish-to-start" || link.link === "start-to-start") start = Math.max(start, moment);
    else finish = Math.max(finish, moment);
  }
  if (!job.needed) return { start: Math.max(start, firstFreeDay(plan)), finish };
  if (task.notBefore !== undefined) start = Math.max(start, dayNumber(plan.start, task.notBefore));
  start = momentLater(job.ownDays, start, job.wait, task.id);
  if (finish > 0) finish = momentLater(job.ownDays, finish, job.wait, task.id);
  start = Math.max(start, firstFreeDay(plan));
  if (task.holdToPlan) start = Math.max(start, plannedStarts.get(task.id) ?? 0);
  return { start, finish };
}

/** The first stretch inside [start, finish) in which a named person lacks the share; undefined: free. */
function shortage(world: World, job: Job, { start, finish }: Position, others: Holder[]) {
  for (const wanted of job.task.people) {
    const person = world.plan.people.find((p) => p.id === wanted.id);
    if (!person) throw new Error(`no person ${wanted.id}`);
    const holds = others.flatMap((other) =>
      other.job.task.people
        .filter((p) => p.id === person.id)
        .map((p) => ({ share: p.share, start: other.start, finish: other.finish })),
    );
    // Between two neighbouring cuts neither the capacity nor who holds it changes.
    const cuts = new Set([start, finish]);
    for (let day = Math.floor(start) + 1; day < finish; day++) cuts.add(day);
    for (const hold of holds)
      for (const t of [hold.start, hold.finish]) if (t > start && t < finish) cuts.add(t);
    const sorted = [...cuts].sort((a, b) => a - b);
    for (let k = 0; k + 1 < sorted.length; k++) {
      const from = sorted[k] ?? 0;
      const to = sorted[k + 1] ?? 0;
      if (to - from <= TOLERANCE) continue;
      const middle = (from + to) / 2;
      let asked = wanted.share;
      for (const hold of holds) if (hold.start < middle && middle < hold.finish) asked += hold.share;
      const present = capacityOn(world.plan, person, Math.floor(middle), wanted.along);
      if (asked > present + TOLERANCE) return { from, to };
    }
  }
  return undefined;
}

/** The last day of `unbroken`'s calendar without work inside [start, finish); undefined: none. */
function lastBreak(world: World, job: Job, { start, finish }: Position): number | undefined {
  if (job.task.unbroken === undefined) return undefined;
  const days = calendarDays(world.plan, job.task.unbroken);
  for (let day = Math.ceil(finish - TOLERANCE) - 1; day >= Math.floor(start + TOLERANCE); day--) {
    if (!days(day)) return day;
  }
  return undefined;
}

/**
 * The earliest position of an unstarted job, not before its bounds and `floor`, with people free of what
 * `others` hold (pass none where capacity is not respected).
 */
export function earliest(
  world: World,
  job: Job,
  bounds: { start: number; finish: number },
  others: Holder[],
  floor = 0,
): Position {
  const who = job.task.id;
  if (job.point) {
    const stand = snap(Math.max(floor, bounds.start, bounds.finish));
    const opens = job.needed && job.task.milestone === "start";
    const moment = opens ? nextWorkingMoment(job.ownDays, stand, who) : stand;
    return { start: moment, finish: moment };
  }
  // A finish bound is met once [0, start] holds what [0, bound] holds, less the task's own work.
  const ahead = workBetween(job.works, 0, bounds.finish) - job.duration;
  let start = Math.max(floor, bounds.start, momentLater(job.works, 0, Math.max(0, ahead), who));
  for (;;) {
    start = nextWorkingMoment(job.works, start, who);
    const position = { start, finish: momentLater(job.works, start, job.duration, who) };
    const broken = lastBreak(world, job, position);
    const short = world.plan.respectCapacity ? shortage(world, job, position, others) : undefined;
    if (broken === undefined && short === undefined) return position;
    // Any start before the end of what is in the way would still run into it.
    start = Math.max(broken === undefined ? 0 : broken + 1, short === undefined ? 0 : short.to);
  }
}

/** Position of a started or finished job, which nothing moves; `later` shifts a start for criticality. */
export function factPosition(job: Job, start = job.factStart): Position {
  if (job.state === "finished") return { start: job.factStart, finish: job.factFinish };
  return { start, finish: momentLater(job.works, start, job.duration, job.task.id) };
}

/** Tasks that hold people where they stand. */
export function holders(placed: Map<string, Position>, jobs: Map<string, Job>): Holder[] {
  const all: Holder[] = [];
  for (const [id, position] of placed) {
    const job = jobs.get(id);
    if (job && !job.point && job.task.people.length > 0) all.push({ ...position, job });
  }
  return all;
}

/**
 * Places every job, one by one: facts first, then among those whose predecessors are all placed the highest
 * priority, then the longest tail, then the id. The map keeps the order of placing.
 */
export function placeAll(world: World): Map<string, Position> {
  const placed = new Map<string, Position>();
  const byId = [...world.jobs.values()].sort((a, b) => (a.task.id < b.task.id ? -1 : 1));
  for (const job of byId) if (job.state !== "ahead") placed.set(job.task.id, factPosition(job));
  const tail = tails(world.plan);
  const at = (id: string): Position => {
    const position = placed.get(id);
    if (!position) throw new Error(`${id} is not placed`);
    return position;
  };
  while (placed.size < byId.length) {
    let next: Job | undefined;
    for (const job of byId) {
      if (placed.has(job.task.id) || !job.task.after.every((link) => placed.has(link.task))) continue;
      const ahead = next === undefined || comesBefore(job, next, tail);
      if (ahead) next = job;
    }
    if (!next) throw new Error("a loop in the links");
    const bounds = boundsOf(world, next, at);
    placed.set(next.task.id, earliest(world, next, bounds, holders(placed, world.jobs)));
  }
  return placed;
}

/** Is `a` placed before `b` when both could be? Equal on priority and tail, the first id stays. */
function comesBefore(a: Job, b: Job, tail: Map<string, number>): boolean {
  if (a.task.priority !== b.task.priority) return a.task.priority > b.task.priority;
  const tailA = tail.get(a.task.id) ?? 0;
  const tailB = tail.get(b.task.id) ?? 0;
  if (tailA !== tailB) return tailA > tailB;
  return a.task.id < b.task.id;
}
