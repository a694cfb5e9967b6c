import type { TaskForecast } from "@leeway/core";
import { plainName } from "../words/plainName.ts";

export type PlanRow = { kind: "phase"; name: string } | { kind: "task"; task: TaskForecast };

/**
 * Tasks under the heading of their phase: phases and tasks in the order they first come. Tasks without a
 * phase stand last, under "Other" when there are phases at all.
 */
export function planRows(tasks: readonly TaskForecast[]): PlanRow[] {
  const phases = new Map<string, TaskForecast[]>();
  const loose: TaskForecast[] = [];
  for (const task of tasks) {
    if (task.phase === undefined) loose.push(task);
    else phases.set(task.phase, [...(phases.get(task.phase) ?? []), task]);
  }
  const rows: PlanRow[] = [];
  for (const [name, members] of phases) {
    rows.push({ kind: "phase", name: plainName(name) });
    for (const task of members) rows.push({ kind: "task", task });
  }
  if (loose.length > 0 && phases.size > 0) rows.push({ kind: "phase", name: "Other" });
  for (const task of loose) rows.push({ kind: "task", task });
  return rows;
}
