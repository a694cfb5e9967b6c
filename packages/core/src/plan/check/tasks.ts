import type { PlanDraft, TaskDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";
import { TOLERANCE } from "./tolerance.ts";

/** What a milestone has no use for. */
const NOT_OF_A_MILESTONE = ["duration", "effort", "remaining", "people", "costPerDay", "unbroken"] as const;

/** Duration, effort and milestones; names a person once; labels of renamed items. */
export function checkTasks(plan: PlanDraft, reading: Reading): void {
  const shares = new Map((plan.people ?? []).map((person) => [person.id, person.share ?? 1]));
  for (const task of plan.tasks ?? []) {
    if (task.milestone === true || task.milestone === "start") checkMilestone(task, reading);
    else checkAmount(task, shares, reading);
    const named = new Set<string>();
    for (const member of task.people ?? []) {
      if (member.id === undefined) continue;
      if (named.has(member.id)) {
        const rule = `${member.id} is named twice in this task.`;
        reading.report(
          reading.placeOf(member),
          "repeated-person",
          rule,
          "Name them once, with the whole `share`.",
        );
      }
      named.add(member.id);
    }
  }
  checkOldIds(plan, reading);
}

function has(task: TaskDraft, key: string, reading: Reading): boolean {
  const { node } = reading.placeOf(task);
  return node.kind === "map" && node.entries.has(key);
}

function checkMilestone(task: TaskDraft, reading: Reading): void {
  for (const key of NOT_OF_A_MILESTONE) {
    if (!has(task, key, reading)) continue;
    const rule = `A milestone is a point in time and has no \`${key}\`.`;
    reading.report(reading.placeOf(task, key), "milestone-key", rule, `Remove \`${key}\`, or \`milestone\`.`);
  }
}

function checkAmount(
  task: TaskDraft,
  shares: ReadonlyMap<string | undefined, number>,
  reading: Reading,
): void {
  const duration = has(task, "duration", reading);
  const effort = has(task, "effort", reading);
  if (duration && effort) {
    const rule = "A task has `duration` or `effort`, not both.";
    reading.report(reading.placeOf(task, "effort"), "duration-and-effort", rule, "Keep one of the two.");
  }
  if (!duration && !effort) {
    const remedy = "Add `duration: [low, likely, high]` in working days, or `milestone: true`.";
    reading.report(reading.placeOf(task), "no-duration", "A task needs `duration` or `effort`.", remedy, {
      received: task.id ?? "",
    });
  }
  if (!effort) return;
  const place = reading.placeOf(task, "effort");
  const people = task.people ?? [];
  if (people.length === 0) {
    if (has(task, "people", reading) && reading.placeOf(task, "people").node.kind !== "list") return;
    reading.report(
      place,
      "effort-without-people",
      "Effort needs a person to do it.",
      "Add `people`, or write `duration`.",
    );
    return;
  }
  let total = 0;
  for (const { id, share } of people) total += share ?? shares.get(id) ?? 1;
  if (total <= TOLERANCE) {
    const rule = "The shares of its people sum to 0; effort could never be done.";
    reading.report(place, "effort-without-people", rule, "Give someone a share above 0.");
  }
}

/** Two things that claim the same old id would share their draws. */
function checkOldIds(plan: PlanDraft, reading: Reading): void {
  const everything = [
    ...(plan.tasks ?? []),
    ...(plan.people ?? []),
    ...(plan.overheads ?? []),
    ...(plan.benefits ?? []),
    ...[...(plan.risks ?? []), ...(plan.assumptions ?? [])].flatMap((entry) => [
      entry,
      ...(entry.responses ?? []),
    ]),
  ];
  const taken = new Map<string, string>();
  for (const { id, was } of everything) if (id !== undefined && was === undefined) taken.set(id, id);
  for (const item of everything) {
    if (item.was === undefined || item.id === undefined) continue;
    const other = taken.get(item.was);
    if (other !== undefined) {
      const rule = `\`${other}\` has or had this id too; the two would share their random draws.`;
      const place = reading.placeOf(item, "was");
      reading.report(place, "old-id-taken", rule, "Keep `was` on the one that was renamed.", {
        severity: "warning",
      });
    }
    taken.set(item.was, item.id);
  }
}
