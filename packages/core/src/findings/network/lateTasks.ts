import { dayNumber } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import type { Plan } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { compile } from "../../simulate/compile.ts";
import type { PlacedTask } from "../context.ts";

/** Tasks against the plan as it would stand without any progress: the nearest there is to a first baseline. */
export interface Lateness {
  /** Due by the status date; `late`: those of them that are unfinished, or finished later, by working days. */
  due: number;
  finished: number;
  late: (PlacedTask & { days: number })[];
}

/** Progress left out. */
function withoutProgress(plan: Plan): Plan {
  const { statusDate: _, ...rest } = plan;
  return {
    ...rest,
    tasks: plan.tasks.map(({ started: _s, finished: _f, remaining: _r, spent: _p, ...task }) => task),
    risks: plan.risks.map((entry) => ({ ...entry, status: "open" })),
    assumptions: plan.assumptions.map((entry) => ({ ...entry, status: "open" })),
  };
}

/** Milestones left out; nothing is due without a status date. */
export function lateTasks(plan: Plan): Lateness {
  const nothing: Lateness = { due: 0, finished: 0, late: [] };
  if (plan.statusDate === undefined) return nothing;
  const model = compile(withoutProgress(plan));
  const first = planAsWritten(model);
  if (first.beyond >= 0) return nothing;
  const evening = dayNumber(plan.statusDate) - model.startDay + 1;
  const byId = new Map(model.tasks.map((task, at) => [task.id, at]));
  const result: Lateness = { due: 0, finished: 0, late: [] };
  plan.tasks.forEach((task, t) => {
    const at = byId.get(task.id) ?? 0;
    const planned = first.block.finish[at]?.[0] ?? 0;
    if (task.milestone !== false || first.block.needed[at]?.[0] === 0 || planned > evening + tolerance)
      return;
    result.due++;
    if (task.finished !== undefined) result.finished++;
    const { calendar } = model.tasks[at] as (typeof model.tasks)[number];
    const until = task.finished === undefined ? evening : dayNumber(task.finished) - model.startDay + 1;
    const days = workAt(calendar, until) - workAt(calendar, planned);
    if (task.finished === undefined || days > tolerance) {
      result.late.push({ task, path: `tasks[${t}]`, days: Math.max(0, days) });
    }
  });
  return result;
}
