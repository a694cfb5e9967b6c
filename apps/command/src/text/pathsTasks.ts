import { columnDays, formatPercent } from "@leeway/charts";
import type { Paths, TaskIndices } from "@leeway/core";
import { inset } from "./inset.ts";
import { type Column, table } from "./page.ts";

const SHOWN = 10;

/** The tasks with most at stake: how often critical, how far they could slip, what is at stake on them. */
export function stakeLines({ tasks, stamp }: Paths, width: number): string[] {
  const staked = tasks
    .flatMap((task) => (task.daysAtStake === undefined ? [] : [{ ...task, daysAtStake: task.daysAtStake }]))
    .sort((a, b) => b.daysAtStake - a.daysAtStake || (a.id < b.id ? -1 : 1));
  if (stamp.iterations === 1) return ["One future has no range, so nothing can be said of what is at stake."];
  if (staked.length === 0) return ["Nothing that could take longer than written decides the finish."];
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "at stake", align: "right" },
    { heading: "critical in", align: "right" },
    { heading: "could slip", align: "right" },
  ];
  const rows = staked
    .slice(0, SHOWN)
    .map((task) => [
      task.name,
      columnDays(task.daysAtStake),
      formatPercent(task.criticality),
      slackCell(task),
    ]);
  return [
    "Near the driving paths, in working days",
    ...table(columns, rows, width),
    ...inset(
      "At stake: what the commitment would gain if it never took longer than as written. Could slip: on average, " +
        "before the finish moved.",
      width,
    ),
  ];
}

function slackCell({ slack }: TaskIndices): string {
  return slack === undefined ? "for ever" : columnDays(slack);
}

/** The trade's four indices of every task that is ever critical, most often critical first. */
export function indexLines({ tasks }: Paths, width: number): string[] {
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "critical", align: "right" },
    { heading: "signif.", align: "right" },
    { heading: "crucial", align: "right" },
    { heading: "sensit.", align: "right" },
  ];
  const rows = tasks
    .filter(({ criticality }) => criticality > 0)
    .map((task) => [
      task.name,
      ...[task.criticality, task.significance, task.cruciality, task.scheduleSensitivity].map((value) =>
        value.toFixed(2),
      ),
    ]);
  return [
    "Indices of the trade, 0 to 1",
    ...table(columns, rows, width),
    ...inset("Criticality, significance, cruciality and schedule sensitivity.", width),
  ];
}
