import type { Plan } from "../../packages/core/src/plan/types.ts";
import { dateOfDay, dayNumber } from "./dates.ts";
import type { Job } from "./job.ts";
import { firstFreeDay, type Position } from "./place.ts";
import { snap } from "./time.ts";

/** The moments of a job read as dates. */
export function readDates(plan: Plan, job: Job, { start, finish }: Position) {
  const { task } = job;
  const startDay = Math.floor(snap(start));
  const finishDay = Math.ceil(snap(finish)) - 1;
  const dates = (from: number, to: number) => ({
    startDate: dateOfDay(plan.start, from),
    finishDate: dateOfDay(plan.start, to),
  });
  // What is recorded is read as it was recorded.
  if (job.state === "finished") {
    return task.milestone ? dates(finishDay, finishDay) : dates(startDay, finishDay);
  }
  if (job.state === "started") return dates(startDay, Math.max(startDay, finishDay));
  if (!job.point) return dates(startDay, finishDay);
  if (job.needed && task.milestone === "start") return dates(startDay, startDay);
  let day = Math.max(finishDay, firstFreeDay(plan));
  if (job.needed && task.notBefore !== undefined) day = Math.max(day, dayNumber(plan.start, task.notBefore));
  return dates(day, day);
}
