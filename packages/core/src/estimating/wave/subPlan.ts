import type { Correlation, Plan, Task } from "../../plan/types.ts";

/**
 * A plan of some of a plan's tasks alone: links to others, dates, progress, the register and standing costs left out, so
 * that what remains is the spread of the estimates themselves. Draws stay those of the plan.
 *
 * @param together  Correlates every pair of durations (efforts) with this coefficient in place of the plan's own.
 */
export function subPlan(plan: Plan, tasks: readonly Task[], together?: number): Plan {
  const ids = new Set(tasks.map(({ id }) => id));
  const { lateness: _lateness, appraisal: _appraisal, statusDate: _statusDate, ...rest } = plan;
  return {
    ...rest,
    commitment: { confidence: plan.commitment.confidence, funds: [] },
    benefits: [],
    tasks: tasks.map((task) => bare(task, ids)),
    intervals: [],
    assumptions: [],
    risks: [],
    correlations: together === undefined ? within(plan.correlations, ids) : allPairs(tasks, together),
    overheads: [],
  };
}

function bare(task: Task, ids: ReadonlySet<string>): Task {
  const {
    notBefore: _notBefore,
    started: _started,
    finished: _finished,
    remaining: _remaining,
    spent: _spent,
    target: _target,
    onlyIf: _onlyIf,
    ...rest
  } = task;
  return { ...rest, holdToPlan: false, after: task.after.filter((link) => ids.has(link.task)) };
}

function within(correlations: readonly Correlation[], ids: ReadonlySet<string>): Correlation[] {
  return correlations.flatMap((each) => {
    const between = each.between.filter((name) => ids.has(name.replace(/^cost:/, "")));
    return between.length > 1 ? [{ ...each, between }] : [];
  });
}

function allPairs(tasks: readonly Task[], coefficient: number): Correlation[] {
  const between = tasks
    .filter(({ duration, effort }) => (duration ?? effort)?.kind === "range")
    .map(({ id }) => id);
  return between.length > 1 ? [{ between, coefficient }] : [];
}
