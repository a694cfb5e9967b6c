import { columnDays, formatDate, formatPercent } from "@leeway/charts";
import type { Future, FutureTask } from "@leeway/core";
import { inset } from "./inset.ts";
import { type Column, cut, table } from "./page.ts";

/** Every task in order of start: when, how long, where its draw stood, and by its number which task held its start. */
export function taskLines({ tasks, draws, plan, finish }: Future, width: number): string[] {
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "no.", align: "right" },
    { heading: "starts", align: "left" },
    { heading: "finishes", align: "left" },
    { heading: "days", align: "right" },
    { heading: "drawn", align: "right" },
    { heading: "held by", align: "left" },
  ];
  const style = plan.start.slice(0, 4) === finish.date.slice(0, 4) ? "shortest" : "short";
  const levels = new Map(
    draws.flatMap(({ of, what, level, counts }) =>
      counts && ["duration", "effort", "remaining"].includes(what) ? [[of.id, level] as const] : [],
    ),
  );
  // What a cell that tells what held a start may take.
  const room = Math.max(12, Math.min(24, width - 60));
  const needed = tasks.filter((task) => task.needed);
  const numbers = new Map(needed.map(({ id }, at) => [id, String(at + 1)]));
  const rows = needed.map((task) => [
    `${task.critical ? "* " : "  "}${task.name}`,
    numbers.get(task.id) ?? "",
    formatDate(task.startDate, style),
    formatDate(task.finishDate, style),
    task.milestone ? "" : columnDays(task.duration),
    levelCell(levels.get(task.id)),
    cut(heldCell(task, numbers, room), room),
  ]);
  const left = tasks.length - needed.length;
  return [
    "Tasks in order of start",
    ...table(columns, rows, width),
    ...(left === 0 ? [] : [`  ${left} not needed in this future`]),
    ...inset(
      "* critical. Drawn: the chance of taking at most that long, before what the register adds. Held by: the number of " +
        "the task it follows; a person's name: it waits for them, busy with that task.",
      width,
    ),
  ];
}

function levelCell(level: number | undefined): string {
  return level === undefined ? "" : formatPercent(level);
}

/** What a task's path follows, and by how many others it is held as well. */
function heldCell(
  { heldBy: bounds }: FutureTask,
  numbers: ReadonlyMap<string, string>,
  room: number,
): string {
  const [first, ...rest] = bounds;
  // That a task at the plan's start also waits for that start goes without saying.
  const others = rest.filter(({ kind }) => kind !== "plan-start");
  if (first === undefined) return "";
  const number = numbers.get(first.task?.id ?? "") ?? first.task?.name ?? "";
  const lag =
    first.lag === undefined ? "" : ` ${first.lag > 0 ? "+" : "−"} ${columnDays(Math.abs(first.lag))}`;
  const ways = {
    "finish-to-start": number,
    "start-to-start": `start of ${number}`,
    "finish-to-finish": `to end with ${number}`,
    "start-to-finish": `to end by ${number}'s start`,
  };
  const kinds = {
    link: `${ways[first.link ?? "finish-to-start"]}${lag}`,
    person: `${cut(first.person?.name ?? "", room - number.length - 2)}: ${number}`,
    away: `${first.person?.name ?? ""}, away`,
    "not-before": "its date",
    "held-to-plan": "start as written",
    "status-date": "status date",
    recorded: "recorded",
    "plan-start": "plan's start",
  };
  const wait = first.wait === undefined ? "" : `, ${columnDays(first.wait)} held back`;
  return `${kinds[first.kind]}${wait}${others.length === 0 ? "" : `, ${others.length} more`}`;
}
