import type { PlanDraft, TaskDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";

/** Progress happened between `start` and `statusDate`, in an order that can be. */
export function checkProgress(plan: PlanDraft, reading: Reading): void {
  const hasStatus = keyOf(reading, plan, "statusDate");
  for (const task of plan.tasks ?? []) {
    for (const key of ["started", "finished", "remaining", "spent"] as const) {
      if (task[key] === undefined) continue;
      if (!hasStatus) {
        const rule = `\`${key}\` needs the plan's \`statusDate\`.`;
        reading.report(
          reading.placeOf(task, key),
          "no-status-date",
          rule,
          "Add `statusDate`, the day up to which it is recorded.",
        );
      }
    }
    for (const key of ["started", "finished"] as const) {
      const day = task[key];
      if (day === undefined) continue;
      if (plan.start !== undefined && day < plan.start) {
        const rule = `It lies before the plan's \`start\`, ${plan.start}.`;
        reading.report(
          reading.placeOf(task, key),
          "progress-date",
          rule,
          "Correct the day, or move `start`.",
        );
      }
      if (plan.statusDate !== undefined && day > plan.statusDate) {
        const rule = `It lies after \`statusDate\`, ${plan.statusDate}; progress has already happened.`;
        reading.report(
          reading.placeOf(task, key),
          "progress-date",
          rule,
          "Correct the day, or move `statusDate`.",
        );
      }
    }
    checkOrder(task, reading);
  }
}

function checkOrder(task: TaskDraft, reading: Reading): void {
  const milestone = task.milestone === true || task.milestone === "start";
  const started = keyOf(reading, task, "started");
  const finished = keyOf(reading, task, "finished");
  const report = (key: string, rule: string, remedy: string) =>
    reading.report(reading.placeOf(task, key), "progress-order", rule, remedy);

  if (task.started !== undefined && task.finished !== undefined && task.finished < task.started) {
    report("finished", `It finished before it started, on ${task.started}.`, "Correct one of the two days.");
  }
  if (finished && !started && !milestone) {
    report("finished", "What is finished has started.", "Add `started`.");
  }
  if (milestone && started && !finished) {
    report("started", "A milestone is a point in time: it is finished or not.", "Write `finished`.");
  }
  if (task.remaining !== undefined && !milestone) {
    if (finished)
      report("remaining", "Nothing remains of a finished task.", "Remove `remaining`, or `finished`.");
    else if (!started)
      report("remaining", "`remaining` is of a started task.", "Add `started`, or write `duration`.");
  }
  if (task.spent !== undefined && !started && !finished) {
    report("spent", "`spent` is of a started or finished task.", "Add `started`.");
  }
}

function keyOf(reading: Reading, draft: object, key: string): boolean {
  const { node } = reading.placeOf(draft);
  return node.kind === "map" && node.entries.has(key);
}
