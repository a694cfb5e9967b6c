import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";
import { findLoops } from "./cycle.ts";

/** Longest loop shown in full. */
const SHOWN = 12;

/** No task is linked twice in the same way, and no links form a loop. */
export function checkLinks(plan: PlanDraft, reading: Reading): void {
  const tasks = plan.tasks ?? [];
  const numbers = new Map<string, number>();
  for (const [index, task] of tasks.entries()) {
    if (task.id !== undefined && !numbers.has(task.id)) numbers.set(task.id, index);
  }
  const successors: number[][] = tasks.map(() => []);
  for (const [index, task] of tasks.entries()) {
    const seen = new Set<string>();
    for (const link of task.after ?? []) {
      if (link.task === undefined) continue;
      const kind = link.link ?? "finish-to-start";
      if (seen.has(`${kind} ${link.task}`)) {
        const rule = `${link.task} is linked ${kind} twice.`;
        reading.report(reading.placeOf(link), "repeated-link", rule, "Keep one, or change its `link`.");
      }
      seen.add(`${kind} ${link.task}`);
      const from = numbers.get(link.task);
      if (from !== undefined) successors[from]?.push(index);
    }
  }

  for (const loop of findLoops(successors)) {
    const ids = loop.map((index) => tasks[index]?.id ?? "?");
    const [first = "?"] = ids;
    const last = tasks[loop[loop.length - 1] ?? 0]?.id;
    const shown = ids.length <= SHOWN ? ids : [...ids.slice(0, SHOWN - 2), "...", ...ids.slice(-1)];
    const closing = (tasks[loop[0] ?? 0]?.after ?? []).find((link) => link.task === last);
    const where = closing ?? tasks[loop[0] ?? 0];
    if (where === undefined) continue;
    const rule = `The links form a loop: ${[...shown, first].join(" -> ")}.`;
    reading.report(reading.placeOf(where), "loop", rule, "Remove one of these links.");
  }
}
