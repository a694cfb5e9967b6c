import type { Estimate, Plan, Task } from "../../packages/core/src/plan/types.ts";
import { dayNumber } from "./dates.ts";
import type { Realisation } from "./realisation.ts";
import { impactScale, registerOf } from "./register.ts";
import { type DayTest, snap, TOLERANCE, workBetween } from "./time.ts";
import { calendarDays, taskDays, weekLength } from "./workdays.ts";

/** What an iteration makes of one task, before it is placed. */
export interface Job {
  task: Task;
  needed: boolean;
  /** `finished`: both moments are facts. `started`: only the start is. */
  state: "finished" | "started" | "ahead";
  /** Start as a fact, for started and finished tasks. */
  factStart: number;
  /** Finish as a fact, for finished tasks. */
  factFinish: number;
  /** Realised duration in working days. */
  duration: number;
  /** Of it, what a started task still has to do. */
  remains: number;
  /** Working days by which its link and date bounds are moved later. */
  wait: number;
  /** No work and no people: a milestone, a realised duration of 0, or not needed. */
  point: boolean;
  /** Days on which it works: its calendar, its people's calendars, their full absences. */
  works: DayTest;
  /** Its own calendar alone: what its waits, and lags that name no other calendar, are counted on. */
  ownDays: DayTest;
}

/** A time value in days: weeks are as many days as the calendar has workdays. */
export function inDays(plan: Plan, estimate: Estimate, value: number, calendar: string): number {
  return estimate.unit === "weeks" ? value * weekLength(plan, calendar) : value;
}

/** What the occurring entries do to one task, responses' scales applied. */
function hitsOn(plan: Plan, task: Task, realisation: Realisation) {
  let factor = 1;
  let delay = 0;
  let wait = 0;
  for (const entry of registerOf(plan)) {
    if (!realisation.occurs(entry.id)) continue;
    const scale = impactScale(entry);
    entry.impacts.forEach((impact, index) => {
      if (!impact.tasks.includes(task.id)) return;
      const value = (part: string) => realisation.value(`${entry.id}:${index}:${part}`);
      const days = (estimate: Estimate, part: string) => inDays(plan, estimate, value(part), task.calendar);
      if (impact.factor) factor *= 1 + scale * (value("factor") - 1);
      if (impact.delay) delay += scale * days(impact.delay, "delay");
      if (impact.wait) wait += scale * days(impact.wait, "wait");
    });
  }
  return { factor, delay, wait };
}

/** The duration an estimate of duration or effort comes to, in working days. */
function sampledDuration(plan: Plan, task: Task, realisation: Realisation): number {
  if (task.duration) {
    return inDays(plan, task.duration, realisation.value(`${task.id}:duration`), task.calendar);
  }
  if (!task.effort) return 0;
  const shares = task.people.reduce((sum, p) => sum + p.share, 0);
  return inDays(plan, task.effort, realisation.value(`${task.id}:effort`), task.calendar) / shares;
}

/** The job of one task in one iteration. */
export function jobOf(plan: Plan, task: Task, realisation: Realisation): Job {
  const day = (date: string) => dayNumber(plan.start, date);
  const works = taskDays(plan, task);
  const base = {
    task,
    needed: true,
    factStart: 0,
    factFinish: 0,
    duration: 0,
    remains: 0,
    wait: 0,
    point: true,
    works,
    ownDays: calendarDays(plan, task.calendar),
  };
  if (task.finished !== undefined) {
    const factFinish = day(task.finished) + 1;
    if (task.milestone) return { ...base, state: "finished", factStart: factFinish, factFinish };
    const factStart = day(task.started ?? task.finished);
    const duration = workBetween(works, factStart, factFinish);
    return { ...base, state: "finished", factStart, factFinish, duration, point: duration <= TOLERANCE };
  }
  const started = task.started !== undefined;
  if (!started && !realisation.needed(task.id)) return { ...base, state: "ahead", needed: false };

  const { factor, delay, wait } = hitsOn(plan, task, realisation);
  const realised = (sampled: number) => Math.max(0, snap(sampled * factor + delay));
  if (task.started !== undefined) {
    const factStart = day(task.started);
    if (task.milestone) return { ...base, state: "started", factStart };
    const held = workBetween(works, factStart, day(plan.statusDate ?? task.started) + 1);
    const remains = task.remaining
      ? realised(inDays(plan, task.remaining, realisation.value(`${task.id}:remaining`), task.calendar))
      : Math.max(0, realised(sampledDuration(plan, task, realisation)) - held);
    const duration = held + remains;
    return { ...base, state: "started", factStart, duration, remains, point: duration <= TOLERANCE };
  }
  if (task.milestone) return { ...base, state: "ahead", wait };
  const duration = realised(sampledDuration(plan, task, realisation));
  return { ...base, state: "ahead", duration, wait, point: duration <= TOLERANCE };
}
