import type { Forecast } from "@leeway/core";
import { drawPlan } from "./bars/drawPlan.ts";
import { planRows } from "./bars/planRows.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { plainName, quoteName } from "./words/plainName.ts";

/**
 * The tasks on the calendar, under their phases: where each may start and finish (P10 to P90, with its
 * middle), where the plan as written puts it, and its date at the committed level.
 *
 * Reads `tasks`, `committed`, `asked`. Any number of tasks; height grows with them, about ten elements each.
 */
export function planBars(forecast: Forecast, options: ChartOptions): Figure {
  const { tasks, committed } = forecast;
  const level = formatPercent(committed.confidence);
  const written = tasks.filter((task) => task.asWritten.needed);
  const late = written.filter((task) => task.finishDates.p50 > task.asWritten.finishDate);
  const title = tasks.length === 0 ? "The plan has no tasks" : finding(late, written.length);
  const subtitle = `Finish of each task, P10 to P90 (edged band, thick tick at its middle), and its start (faint band); ochre: the plan as written`;
  const last = tasks.reduce<(typeof tasks)[number] | undefined>(
    (latest, task) => (latest === undefined || task.finish.p90 > latest.finish.p90 ? task : latest),
    undefined,
  );
  const summary =
    last === undefined
      ? "The plan has no tasks."
      : `${tasks.length === 1 ? "One task" : `${tasks.length} tasks`} on a calendar. The last to finish is ${quoteName(last.name)}, between ${formatDate(last.finishDates.p10)} and ${formatDate(last.finishDates.p90)} in eight futures of ten, ${level} by ${formatDate(last.finishDates.committed)}.`;
  const rows = planRows(tasks).flatMap((row) => (row.kind === "task" ? [row.task] : []));
  return {
    title,
    subtitle,
    summary,
    table: {
      columns: [
        { name: "Task", align: "start" },
        { name: "Phase", align: "start" },
        { name: "Start as written", align: "end" },
        { name: "Finish as written", align: "end" },
        { name: "Starts, P10", align: "end" },
        { name: "Starts, P90", align: "end" },
        { name: "Finishes, P10", align: "end" },
        { name: "Finishes, P50", align: "end" },
        { name: "Finishes, P90", align: "end" },
        { name: `Finishes, ${level}`, align: "end" },
        { name: "Critical", align: "end" },
        { name: "Needed", align: "end" },
        { name: "Target and its chance", align: "end" },
      ],
      rows: rows.map((task) => [
        plainName(task.name),
        task.phase === undefined ? "" : plainName(task.phase),
        task.asWritten.needed ? formatDate(task.asWritten.startDate) : "not taken",
        task.asWritten.needed ? formatDate(task.asWritten.finishDate) : "not taken",
        formatDate(task.startDates.p10),
        formatDate(task.startDates.p90),
        formatDate(task.finishDates.p10),
        formatDate(task.finishDates.p50),
        formatDate(task.finishDates.p90),
        formatDate(task.finishDates.committed),
        formatPercent(task.critical),
        formatPercent(task.needed),
        task.target === undefined
          ? ""
          : `${formatDate(task.target.date)}: ${formatPercent(task.target.chance)}`,
      ]),
    },
    svg: tasks.length === 0 ? emptyDrawing("The plan has no tasks.", options) : drawPlan(forecast, options),
  };
}

function finding(late: readonly { name: string }[], of: number): string {
  const most = "later than written in more than half of the futures";
  if (late.length === 0) return `No task finishes ${most}`;
  const only = late[0];
  if (late.length === 1 && only !== undefined) return `${quoteName(only.name)} finishes ${most}`;
  if (late.length < of) return `${late.length} of ${of} tasks finish ${most}`;
  return `${of === 2 ? "Both" : `All ${of}`} tasks finish ${most}`;
}
