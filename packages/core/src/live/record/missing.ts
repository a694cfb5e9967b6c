import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import type { Plan } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { compile } from "../../simulate/compile.ts";
import { finishDay, startDay } from "../../simulate/critical.ts";
import type { DueTask, StillMissing } from "./types.ts";

export const nothingMissing: StillMissing = { remaining: [], toStart: [], toFinish: [] };

/**
 * What a report leaves open: started tasks of which nobody said what remains, and what was due by the status date in
 * the plan as it was written before the report, by date and then by id. Simulates nothing.
 *
 * @param before  The plan before the report; its own as-written dates include the progress it had.
 */
export function missingAfter(before: Plan, after: Plan): StillMissing {
  const { statusDate } = after;
  const remaining = after.tasks.flatMap(({ id, name, milestone, started, finished, remaining: left }) =>
    started === undefined || finished !== undefined || left !== undefined || milestone !== false
      ? []
      : [{ id, name, started }],
  );
  if (statusDate === undefined) return { ...nothingMissing, remaining };
  const now = new Map(after.tasks.map((task) => [task.id, task]));
  const toStart: DueTask[] = [];
  const toFinish: DueTask[] = [];
  for (const { id, startDate, finishDate } of datesAsWritten(before)) {
    const task = now.get(id);
    if (task === undefined || task.finished !== undefined) continue;
    if (task.started !== undefined) {
      if (finishDate <= statusDate) toFinish.push({ id, name: task.name, date: finishDate });
    } else if (startDate <= statusDate) toStart.push({ id, name: task.name, date: startDate });
  }
  return { remaining, toStart: byDate(toStart), toFinish: byDate(toFinish) };
}

/** Dates of the plan as written, of tasks that it takes to be needed; none where it runs past its calendars. */
function datesAsWritten(plan: Plan): { id: string; startDate: string; finishDate: string }[] {
  const model = compile(plan);
  const { block, beyond } = planAsWritten(model);
  if (beyond >= 0) return [];
  const dateOf = (day: number) => isoDate(model.startDay + Math.max(0, day));
  return model.tasks.flatMap((task, j) => {
    if (block.needed[j]?.[0] === 0) return [];
    const point = (block.duration[j]?.[0] ?? 0) <= tolerance;
    return [
      {
        id: task.id,
        startDate: dateOf(startDay(task, block.start[j]?.[0] ?? 0, point)),
        finishDate: dateOf(finishDay(task, block.finish[j]?.[0] ?? 0, point)),
      },
    ];
  });
}

function byDate(due: DueTask[]): DueTask[] {
  return due.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.id < b.id ? -1 : 1));
}
