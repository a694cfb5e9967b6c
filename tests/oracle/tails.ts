import type { Plan, Task } from "../../packages/core/src/plan/types.ts";
import { writtenValue } from "./estimates.ts";
import { inDays } from "./job.ts";

/** A task's as-written duration in working days, by its estimate alone. */
function writtenDuration(plan: Plan, task: Task): number {
  const estimate = task.duration ?? task.effort;
  if (!estimate) return 0;
  const days = inDays(plan, estimate, Math.max(0, writtenValue(estimate)), task.calendar);
  return task.duration ? days : days / task.people.reduce((sum, p) => sum + p.share, 0);
}

/** The tail of every task, rounded to 1e-6: what of the plan as written hangs on it, in working days. */
export function tails(plan: Plan): Map<string, number> {
  const exact = new Map<string, number>();
  const tailOf = (task: Task): number => {
    const known = exact.get(task.id);
    if (known !== undefined) return known;
    const d = writtenDuration(plan, task);
    let tail = d;
    for (const successor of plan.tasks) {
      for (const link of successor.after) {
        if (link.task !== task.id) continue;
        const lag = inDays(plan, link.lag, writtenValue(link.lag), link.lagCalendar ?? successor.calendar);
        const beyond = tailOf(successor);
        const dj = writtenDuration(plan, successor);
        if (link.link === "finish-to-start") tail = Math.max(tail, d + lag + beyond);
        if (link.link === "start-to-start") tail = Math.max(tail, lag + beyond);
        if (link.link === "finish-to-finish") tail = Math.max(tail, d + lag + beyond - dj);
        if (link.link === "start-to-finish") tail = Math.max(tail, lag + beyond - dj);
      }
    }
    exact.set(task.id, tail);
    return tail;
  };
  return new Map(plan.tasks.map((task) => [task.id, Math.round(tailOf(task) * 1e6) / 1e6]));
}
