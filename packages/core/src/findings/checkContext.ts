import type { Plan } from "../plan/types.ts";
import type { CheckContext } from "./context.ts";
import { lateTasks } from "./network/lateTasks.ts";
import { writtenPlan } from "./network/written.ts";
import type { FindingOptions } from "./types.ts";

/** What checks look at, from the plan and what is handed in. */
export function checkContext(plan: Plan, { today, forecast }: FindingOptions): CheckContext {
  const written = writtenPlan(plan);
  const { statusDate } = plan;
  const later = today === undefined || (statusDate !== undefined && statusDate > today) ? statusDate : today;
  return {
    plan,
    now: later,
    today,
    forecast,
    written: "beyond" in written ? undefined : written,
    beyond: "beyond" in written ? { model: written.model, at: written.beyond } : undefined,
    late: lateTasks(plan),
    work: plan.tasks
      .map((task, t) => ({ task, path: `tasks[${t}]` }))
      .filter(({ task }) => task.milestone === false && task.finished === undefined),
  };
}
