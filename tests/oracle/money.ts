import type { Plan } from "../../packages/core/src/plan/types.ts";
import { keyedEstimates, writtenAndCut } from "./estimates.ts";
import type { Job } from "./job.ts";
import type { Position } from "./place.ts";
import type { Realisation } from "./realisation.ts";
import { impactScale, registerOf } from "./register.ts";
import { TOLERANCE, workBetween } from "./time.ts";
import { calendarDays } from "./workdays.ts";

/** What one task costs in this iteration. */
export function taskCost(plan: Plan, job: Job, realisation: Realisation): number {
  const { task } = job;
  if (!job.needed) return 0;
  if (job.state === "finished" && task.spent !== undefined) return task.spent;
  // No draw touches a finished task: its estimates of money count as written.
  const estimates = keyedEstimates(plan);
  const money = (key: string) => {
    const estimate = estimates.get(`${task.id}:${key}`);
    if (!estimate) return 0;
    return job.state === "finished" ? writtenAndCut(estimate) : realisation.value(estimate.key);
  };
  let perDay = money("costPerDay");
  for (const person of [...task.people].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    perDay += (plan.people.find((p) => p.id === person.id)?.rate ?? 0) * person.share;
  }
  if (job.state === "started" && task.spent !== undefined) {
    const left = job.duration > TOLERANCE ? job.remains / job.duration : 0;
    return task.spent + job.remains * perDay + money("cost") * left;
  }
  return money("cost") + job.duration * perDay;
}

/** Money of occurring risks and assumptions, responses' scales applied. */
export function registerMoney(plan: Plan, realisation: Realisation): number {
  let sum = 0;
  for (const entry of registerOf(plan)) {
    if (!realisation.occurs(entry.id)) continue;
    entry.impacts.forEach((impact, index) => {
      if (impact.cost) sum += impactScale(entry) * realisation.value(`${entry.id}:${index}:cost`);
    });
  }
  return sum;
}

/** Money of adopted responses, whatever the status of what they answer. */
export function responseMoney(plan: Plan, realisation: Realisation): number {
  let sum = 0;
  for (const response of registerOf(plan).flatMap((entry) => entry.responses)) {
    if (response.adopted && response.cost) sum += realisation.value(`${response.id}:cost`);
  }
  return sum;
}

/** Overheads: per working day of the plan's calendar, from a start to a finish, zero if reversed. */
export function overheadMoney(plan: Plan, at: Map<string, Position>, finish: number, r: Realisation): number {
  const days = calendarDays(plan, plan.calendar);
  let sum = 0;
  for (const overhead of [...plan.overheads].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const from = overhead.from === undefined ? 0 : (at.get(overhead.from)?.start ?? 0);
    const to = overhead.to === undefined ? finish : (at.get(overhead.to)?.finish ?? 0);
    sum += r.value(`${overhead.id}:perDay`) * workBetween(days, from, to);
  }
  return sum;
}
