import type { Estimate, Id, Plan, RegisterEntry, Task } from "../plan/types.ts";

/** What an opinion of a task can be about. */
export type OpinionOf = "duration" | "effort" | "cost";

/** How an answer is counted: `days` are working days of a duration, person-days of an effort. */
export type AnswerUnit = "days" | "weeks" | "money";

/** One estimate of a task that somebody can be asked for. */
export interface Askable {
  task: Id;
  name: string;
  of: OpinionOf;
  unit: AnswerUnit;
  /** The unit in words: `working days`, `weeks`, `person-days`, `person-weeks`, or the plan's currency. */
  unitWords: string;
  /** Open risks that can touch the task: what happens then is not part of its range. */
  events: string[];
  /** Open assumptions that can: its range holds for the case that they do. */
  holds: string[];
}

/**
 * The estimates of a task that can be asked for: its time, and its cost where it has one. None of a milestone or of a
 * task that is finished.
 */
export function askableOf(plan: Plan, task: Task): Askable[] {
  if (task.finished !== undefined) return [];
  const touching = (entries: readonly RegisterEntry[]) =>
    entries
      .filter(({ status }) => status === "open")
      .filter(({ impacts }) => impacts.some(({ tasks }) => tasks.includes(task.id)))
      .map(({ name }) => name);
  const [events, holds] = [touching(plan.risks), touching(plan.assumptions)];
  const base = { task: task.id, name: task.name, events, holds };
  const result: Askable[] = [];
  // Not called `of`: Node's own reader of TypeScript stumbles over `of of`.
  for (const amount of ["duration", "effort"] as const) {
    const estimate = task[amount];
    if (estimate === undefined || task.milestone !== false) continue;
    result.push({ ...base, of: amount, unit: estimate.unit, unitWords: unitWords(amount, estimate) });
  }
  if (task.cost !== undefined) result.push({ ...base, of: "cost", unit: "money", unitWords: plan.currency });
  return result;
}

function unitWords(of: "duration" | "effort", { unit }: Estimate): string {
  if (of === "duration") return unit === "weeks" ? "weeks" : "working days";
  return unit === "weeks" ? "person-weeks" : "person-days";
}
