import type { Paths, TaskIndices } from "@leeway/core";
import { drawBarPanels } from "./bars/drawBarPanels.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { palette } from "./palette.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDays } from "./words/formatDays.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { plainName, quoteName } from "./words/plainName.ts";

const most = 12;

/**
 * The working days at stake on each task, and how often it is critical: a task that is often critical but never late
 * has none. The twelve with most at stake; the trade's indices are in the table.
 *
 * Reads `tasks`, `confidence`.
 */
export function tasksAtStake(answer: Paths, options: ChartOptions): Figure {
  const colours = palette(options.theme);
  const level = formatPercent(answer.confidence);
  const stake = (task: TaskIndices) => task.daysAtStake ?? 0;
  const critical = answer.tasks.filter((task) => task.criticality > 0).sort((a, b) => stake(b) - stake(a));
  const known = critical.filter((task) => task.daysAtStake !== undefined);
  const shown = known.slice(0, most);
  const rest = critical.length - shown.length;
  const index = (value: number) => groupDigits(value, 2);
  const [best] = known;
  const title =
    best === undefined
      ? "No task is ever critical"
      : columnDays(stake(best)) === "0"
        ? "No single task has days at stake: kept to what is written, none alone moves the finish"
        : `${quoteName(best.name)} has most at stake: ${formatDays(stake(best))}, were it never to take longer than written`;
  return {
    title,
    subtitle: `How often each task is critical, and what the ${level} finish would gain if it never took longer than written, in working days`,
    summary:
      best === undefined
        ? "No task of this plan is critical in any future."
        : `Most at stake: ${shown
            .slice(0, 5)
            .map(
              (task) =>
                `${quoteName(task.name)} ${formatDays(stake(task))}, critical in ${formatPercent(task.criticality)}`,
            )
            .join("; ")}.`,
    table: {
      columns: [
        { name: "Task", align: "start" },
        { name: "Critical", align: "end" },
        { name: "At stake", unit: "working days", align: "end" },
        { name: "Could slip, mean", unit: "working days", align: "end" },
        { name: "Significance", align: "end" },
        { name: "Cruciality", align: "end" },
        { name: "Schedule sensitivity", align: "end" },
      ],
      rows: answer.tasks.map((task) => [
        plainName(task.name),
        formatPercent(task.criticality),
        task.daysAtStake === undefined ? "" : columnDays(task.daysAtStake),
        task.slack === undefined ? "never moves it" : columnDays(task.slack),
        index(task.significance),
        index(task.cruciality),
        index(task.scheduleSensitivity),
      ]),
    },
    svg:
      shown.length === 0
        ? emptyDrawing("No task is critical in any future.", options)
        : drawBarPanels(
            shown.map((task) => ({
              name: task.name,
              word: "",
              paint: { fill: colours.rangeCore, stroke: colours.rangeEdge },
              bars: [
                { value: task.criticality, text: formatPercent(task.criticality) },
                {
                  value: columnDays(stake(task)) === "0" ? 0 : stake(task),
                  text: columnDays(stake(task)),
                },
              ],
            })),
            [
              { name: "Critical", unit: "of futures" },
              { name: "At stake", unit: "working days" },
            ],
            rest === 0 ? "" : `and ${rest} more that are critical in some futures`,
            options,
          ),
  };
}
