import type { Assumption, Plan, Risk, Task } from "../../plan/types.ts";

/** The plan as it would stand had nothing of it happened yet: no status date, no actuals, every entry open. */
export function withoutProgress(plan: Plan): Plan {
  const { statusDate: _, ...rest } = plan;
  return {
    ...rest,
    tasks: plan.tasks.map(notBegun),
    risks: plan.risks.map((entry): Risk => ({ ...entry, status: "open" })),
    assumptions: plan.assumptions.map((entry): Assumption => ({ ...entry, status: "open" })),
  };
}

function notBegun({ started: _s, finished: _f, remaining: _r, spent: _p, ...task }: Task): Task {
  return task;
}
