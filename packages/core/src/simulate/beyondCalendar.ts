import type { Problem } from "../plan/problem.ts";
import type { Model } from "./model.ts";

/** A task that runs past the end of what calendars cover, as a problem that names it. */
export function beyondCalendar(model: Model, task: number): Problem {
  const { id } = model.tasks[task] as Model["tasks"][number];
  return {
    code: "beyond-calendar",
    severity: "error",
    path: "tasks",
    received: `\`${id}\``,
    rule: "It finds no working day within 366 days, or runs past day 36,525 after the start.",
    remedy: "Give its calendar (and its people) working days, or shorten what it waits for.",
  };
}
