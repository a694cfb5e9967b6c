import type { Plan } from "../../packages/core/src/plan/types.ts";
import { keyedEstimates, writtenAndCut } from "./estimates.ts";
import { adoptedResponses, registerOf } from "./register.ts";

/** Everything chance decides in one iteration. */
export interface Realisation {
  /**
   * Value of an estimate in its WRITTEN unit, after cutting at zero where the format cuts. Keys:
   * `TASK:duration`, `:effort`, `:remaining`, `:cost`, `:costPerDay`; `SUCC:lag:PRED:LINKKIND`;
   * `ENTRY:IMPACTINDEX:delay|factor|wait|cost`; `OVERHEAD:perDay`; `RESPONSE:cost`.
   */
  value(key: string): number;
  /** Does this risk or assumption occur (status, groups and responses already applied)? */
  occurs(entryId: string): boolean;
  /** The outcome of `chance` and `onlyIf`. */
  needed(taskId: string): boolean;
}

/** The plan as written: as-written values, `chance` >= 0.5 taken, only what has occurred occurs. */
export function asWrittenRealisation(plan: Plan): Realisation {
  const estimates = keyedEstimates(plan);
  const adopted = adoptedResponses(plan);
  return {
    value(key) {
      const estimate = estimates.get(key);
      if (!estimate) throw new Error(`no estimate ${key}`);
      return writtenAndCut(estimate);
    },
    occurs: (id) => registerOf(plan).some((entry) => entry.id === id && entry.status === "occurred"),
    needed(id) {
      const task = plan.tasks.find((t) => t.id === id);
      if (!task) throw new Error(`no task ${id}`);
      return task.chance >= 0.5 && (task.onlyIf === undefined || adopted.has(task.onlyIf));
    },
  };
}
