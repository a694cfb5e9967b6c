import type { TaskForecast } from "@leeway/core";
import { plainName } from "../words/plainName.ts";

export type PlanRow = { kind: "phase"; name: string } | { kind: "task"; task: TaskForecast };

/**
 * Tasks under the heading of their phase, in the order of the calendar: by the middle of their starts, then of
 * their finishes, then as they come; phases by their first task. Tasks without a phase stand last, under
 * "Other" when there are phases at all.
 */
export function planRows(tasks: readonly TaskForecast[]): PlanRow[] {
  const sorted = [...tasks].sort((a, b) => a.start.p50 - b.start.p50 || a.finish.p50 - b.finish.p50);
  const phases = new Map<string, PlanRow[]>();
  const loose: PlanRow[] = [];
  for (const task of sorted) {
    const row: PlanRow = { kind: "task", task };
    if (task.phase === undefined) loose.push(row);
    else if (phases.has(task.phase)) phases.get(task.phase)?.push(row);
    else phases.set(task.phase, [row]);
  }
  const rows: PlanRow[] = [];
  for (const [name, members] of phases) rows.push({ kind: "phase", name: plainName(name) }, ...members);
  if (loose.length > 0 && phases.size > 0) rows.push({ kind: "phase", name: "Other" });
  return rows.concat(loose);
}
