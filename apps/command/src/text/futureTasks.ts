import { columnDays, formatDate, formatPercent } from "@leeway/charts";
import type { Future, FutureTask } from "@leeway/core";
import { type Column, cut, table } from "./page.ts";
import { boundWords } from "./whyWords.ts";

/** Every task in order of start: when, how long against as written, where its draw stood, and what held its start. */
export function taskLines({ tasks, draws }: Future, width: number): string[] {
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "starts", align: "left" },
    { heading: "finishes", align: "left" },
    { heading: "days", align: "right" },
    { heading: "drawn", align: "right" },
    { heading: "held by", align: "left" },
  ];
  const levels = new Map(
    draws.flatMap(({ of, what, level, counts }) =>
      counts && ["duration", "effort", "remaining"].includes(what) ? [[of.id, level] as const] : [],
    ),
  );
  const room = Math.max(14, Math.floor((width - 44) * 0.55));
  const needed = tasks.filter((task) => task.needed);
  const rows = needed.map((task) => [
    `${task.critical ? "* " : "  "}${task.name}`,
    formatDate(task.startDate, "weekday-no-year"),
    formatDate(task.finishDate, "weekday-no-year"),
    task.milestone ? "" : columnDays(task.duration),
    levelCell(levels.get(task.id)),
    cut(heldBy(task), room),
  ]);
  const left = tasks.length - needed.length;
  return [
    "Tasks in order of start (* critical; drawn: the chance of taking at most that long)",
    ...table(columns, rows, width),
    ...(left === 0 ? [] : [`  ${left} not needed in this future`]),
  ];
}

function levelCell(level: number | undefined): string {
  return level === undefined ? "" : formatPercent(level);
}

function heldBy({ heldBy: bounds }: FutureTask): string {
  const [first, ...others] = bounds;
  if (first === undefined) return "";
  return others.length === 0 ? boundWords(first) : `${boundWords(first)} (and ${others.length} more)`;
}
