import { columnDays, formatPercent } from "@leeway/charts";
import type { PeopleLoad } from "@leeway/core";
import { type Column, cut, table, wrap } from "./page.ts";

const SHOWN = 8;
/** Waits below this many days read as nought. */
const LEAST = 0.05;

/** Who waits for whom, the longest wait first. */
export function waitLines(load: PeopleLoad, width: number): string[] {
  if (load.people.length === 0 || !load.respectCapacity) return [];
  if (load.waits.length === 0)
    return ["Nobody waits for anybody: no task is held up by a person, in any future."];
  const columns: Column[] = [
    { heading: "waits", align: "left" },
    { heading: "for", align: "left" },
    { heading: "behind", align: "left" },
    { heading: "written", align: "right" },
    { heading: "mean", align: "right" },
    { heading: "in", align: "right" },
  ];
  const room = Math.max(10, Math.floor((width - 40) / 2.4));
  const long = load.waits.filter(({ asWritten, mean }) => Math.max(asWritten, mean) >= LEAST);
  const rows = (long.length === 0 ? load.waits : long)
    .slice(0, SHOWN)
    .map(({ task, person, behind, asWritten, mean, share }) => [
      task.name,
      cut(person.name, Math.max(10, room - 3)),
      cut(behind?.name ?? "a part-time absence", room),
      columnDays(asWritten),
      columnDays(mean),
      formatPercent(share),
    ]);
  const rest = load.waits.length - rows.length;
  return [
    ...wrap(
      "Who waits for whom: working days lost, in the plan as written and on average over the futures",
      width,
    ),
    ...table(columns, rows, width),
    ...(rest > 0 ? [`  and ${rest} more, shorter than these`] : []),
    ...wrap("A task that is not on the driving path may wait without moving the finish.", width),
  ];
}
