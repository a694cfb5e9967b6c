import { asWrittenValue } from "../../sampling/index.ts";
import type { Check } from "../context.ts";

/** Least finished tasks with a range before their record says anything, and the share that should lie within. */
const LEAST = 5;
const SHARE = 0.6;

/** Whether finished tasks took what their ranges said: as working days of their own calendars. */
export const checkHistory: Check = ({ plan, written }) => {
  if (written === undefined) return [];
  const record = plan.tasks.flatMap((task) => {
    const estimate = task.duration ?? task.effort;
    const at = written.tasks.get(task.id);
    const model = at === undefined ? undefined : written.model.tasks[at.at];
    if (task.finished === undefined || estimate?.kind !== "range" || model?.progress === undefined) return [];
    const scale = model.durationScale;
    const took = model.progress.held;
    const within = took >= estimate.low * scale && took <= estimate.high * scale;
    return [{ id: task.id, within, ratio: took / (asWrittenValue(estimate) * scale) }];
  });
  const within = record.filter((each) => each.within).length;
  if (record.length < LEAST || within / record.length >= SHARE) return [];
  const ratio = record.reduce((sum, each) => sum + each.ratio, 0) / record.length;
  const mean = Number.isFinite(ratio)
    ? ` On average they took ${ratio.toFixed(2)} times what was likely.`
    : "";
  return [
    {
      code: "ranges-miss-history",
      path: "tasks",
      ids: record.filter((each) => !each.within).map(({ id }) => id),
      says: `Of ${record.length} finished tasks, ${within} took a time within their range.${mean}`,
    },
  ];
};
