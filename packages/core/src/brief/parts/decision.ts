import type { Forecast } from "../../forecast/types.ts";
import type { Plan } from "../../plan/types.ts";
import type { BriefDecision } from "../types.ts";

/** What is asked: the plan's own sentence when it has one, and in any case the commitment it amounts to. */
export function briefDecision(plan: Plan, { committed }: Forecast): BriefDecision {
  const { decision, commitment } = plan;
  const task = plan.tasks.find(({ id }) => id === commitment.finishOf);
  return {
    ...(decision?.ask === undefined ? {} : { ask: decision.ask }),
    ...(task === undefined ? {} : { finishOf: { id: task.id, name: task.name } }),
    date: committed.date,
    cost: committed.cost,
    ...(decision?.by === undefined ? {} : { by: decision.by }),
  };
}
