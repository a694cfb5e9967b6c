import type { Task } from "../../plan/types.ts";
import type { CheckContext, PlacedTask } from "../context.ts";
import { downstreamOf, successorsOf } from "./links.ts";

/** Work that nothing comes before, or after, although it is neither where the plan begins nor where it ends. */
export interface OpenEnds {
  starts: PlacedTask[];
  ends: PlacedTask[];
}

/**
 * Where a plan may begin: at its milestones, or at its only task without a predecessor. Where it may end: at the task
 * whose finish is promised and whatever comes after it; else at its milestones, at the only task without a successor,
 * or, where no milestone closes it, at the last to finish.
 */
export function openEnds({ plan, work, written }: CheckContext): OpenEnds {
  const successors = successorsOf(plan);
  const first = plan.tasks.filter(({ after }) => after.length === 0);
  const last = plan.tasks.filter(({ id }) => successors.get(id)?.length === 0);
  const { finishOf } = plan.commitment;
  const closing = finishOf === undefined ? undefined : downstreamOf(finishOf, successors).add(finishOf);
  const closed = last.some(({ milestone }) => milestone !== false);
  const latest = closed ? undefined : latestOf(last, (id) => written?.tasks.get(id)?.finish ?? 0);
  const mayEnd = (task: Task) =>
    closing !== undefined ? closing.has(task.id) : last.length === 1 || task === latest;
  return {
    starts: work.filter(
      ({ task }) => first.length > 1 && task.after.length === 0 && task.started === undefined,
    ),
    ends: work.filter(({ task }) => successors.get(task.id)?.length === 0 && !mayEnd(task)),
  };
}

function latestOf(tasks: readonly Task[], finish: (id: string) => number): Task | undefined {
  let found: Task | undefined;
  for (const task of tasks) if (found === undefined || finish(task.id) > finish(found.id)) found = task;
  return found;
}
