import type { Future, FutureTask } from "@leeway/core";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { drawFuture } from "./future/drawFuture.ts";
import { eventsByTask } from "./future/eventsByTask.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatDays } from "./words/formatDays.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { plainName, quoteName } from "./words/plainName.ts";
import { roundSignificant } from "./words/roundSignificant.ts";

/**
 * One future replayed on the calendar: when each task started and finished, the path that set the finish, what
 * occurred and whom it struck, and where the plan as written had put each finish.
 *
 * Reads all but `cost.lines`. Any number of tasks; height grows with them.
 */
export function futureBars(future: Future, options: ChartOptions): Figure {
  const { tasks, finish, asWritten, events, path, stamp } = future;
  const touched = eventsByTask(future);
  const occurred = events.filter((event) => event.occurred);
  const elsewhere = occurred.filter(
    (event) => ![...touched.values()].some((names) => names.includes(event.name)),
  );
  const later = finish.workingDays - asWritten.workingDays;
  const on = new Set(path.map(({ task }) => task.id));
  const word = (task: FutureTask) => {
    const struck = touched.get(task.id) ?? [];
    if (struck.length > 0) return struck.join(", ");
    const [first] = task.heldBy;
    return first?.kind === "person" && first.person !== undefined ? `waits for ${first.person.name}` : "";
  };
  const which = `Future ${groupDigits(future.iteration)} of ${groupDigits(stamp.iterations)}`;
  return {
    title: finding(future, later),
    subtitle: `${which}: when each task was done. Full bars set the finish; plum squares: a risk or a wrong assumption struck; diamonds: finishes as written`,
    summary: `${which}: it finishes on ${formatDate(finish.date, "long")}, no later than which ${formatPercent(finish.level)} of the futures finish${costWords(future)}. ${occurred.length === 0 ? "No risk occurred." : `Occurred: ${occurred.map((event) => quoteName(event.name)).join(", ")}.`} The path that set the finish: ${path.map(({ task }) => plainName(task.name, 60)).join(", ") || "none"}.`,
    table: {
      columns: [
        { name: "Task", align: "start" },
        { name: "Started", align: "end" },
        { name: "Finished", align: "end" },
        { name: "As written", align: "end" },
        { name: "Took", unit: "working days", align: "end" },
        { name: "As written", unit: "working days", align: "end" },
        { name: "On the path", align: "start" },
        { name: "Could have slipped", unit: "working days", align: "end" },
        { name: "What happened", align: "start" },
      ],
      rows: tasks.map((task) => [
        plainName(task.name),
        task.needed ? formatDate(task.startDate) : "not needed",
        task.needed ? formatDate(task.finishDate) : "not needed",
        formatDate(task.asWritten.finishDate),
        task.needed ? columnDays(task.duration) : "",
        columnDays(task.asWritten.duration),
        on.has(task.id) ? "yes" : "no",
        task.slack === undefined ? "" : columnDays(task.slack),
        word(task) === "" ? "" : plainName(word(task)),
      ]),
    },
    svg:
      tasks.length === 0
        ? emptyDrawing("The plan has no tasks.", options)
        : drawFuture(
            {
              future,
              tasks,
              word,
              touched: (task) => touched.has(task.id),
              marks: [
                {
                  level: "asWritten",
                  title: "As written",
                  detail: formatDate(asWritten.date),
                  day: asWritten.day,
                },
                {
                  level: "half",
                  title: "This future",
                  detail: `${formatDate(finish.date)} · ${formatPercent(finish.level)} finish by then`,
                  day: finish.day,
                },
              ],
              heading: "finished",
              rest:
                elsewhere.length === 0
                  ? ""
                  : `Without a task: ${elsewhere.map((event) => quoteName(event.name)).join(", ")}`,
            },
            options,
          ),
  };
}

function finding({ finish, asWritten, events, asWritten: { date } }: Future, later: number): string {
  const occurred = events.filter((event) => event.occurred).length;
  const risks =
    occurred === 0
      ? "nothing of the register occurs"
      : `${occurred === 1 ? "one event" : `${occurred} events`} of the register ${occurred === 1 ? "occurs" : "occur"}`;
  const by = formatDate(finish.date, "weekday");
  if (finish.date === asWritten.date)
    return `In this future ${risks} and the plan finishes as written, on ${by}`;
  const size =
    columnDays(later) === "0"
      ? formatDate(date)
      : `${formatDays(Math.abs(later))} ${later < 0 ? "before" : "after"} the plan as written`;
  return columnDays(later) === "0"
    ? `In this future ${risks} and the plan finishes on ${by}, as written on ${size}`
    : `In this future ${risks} and the plan finishes on ${by}, ${size}`;
}

/** Nothing where no future of the plan costs anything. */
function costWords({ cost, plan }: Future): string {
  if (cost.total === 0 && cost.level === 1) return "";
  return `, and costs ${formatMoney(roundSignificant(cost.total, 4), plan.currency)}`;
}
