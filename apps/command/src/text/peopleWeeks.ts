import { columnDays, formatDate } from "@leeway/charts";
import type { PeopleLoad, PersonLoad } from "@leeway/core";
import { type Column, cut, table, wrap } from "./page.ts";

const EIGHTHS = "▁▂▃▄▅▆▇█";
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** How many weeks there are up to the last in which a row holds anything. */
function weeksUsed(rows: readonly (readonly number[])[]): number {
  return Math.max(0, ...rows.map((row) => row.findLastIndex((days) => days > 0.005) + 1));
}

/** One letter a week: how full the capacity present is; "×" beyond it or while away. */
function sign(asked: number, present: number, beyond: number): string {
  if (asked < 0.005) return "·";
  if (beyond > 0.005 || asked > present + 0.005) return "×";
  return EIGHTHS[Math.min(7, Math.max(0, Math.ceil((asked / present) * 8 - 1e-6) - 1))] ?? "×";
}

/** Month names above the first week that begins in each, where they fit. */
function months(weeks: readonly string[]): string {
  let line = "";
  weeks.forEach((monday, w) => {
    const before = weeks[w - 1];
    const begins = before === undefined || before.slice(5, 7) !== monday.slice(5, 7);
    if (begins && line.length <= w) line = line.padEnd(w) + (MONTHS[Number(monday.slice(5, 7)) - 1] ?? "");
  });
  return line;
}

/** Load of everybody as one letter a week, in the plan as written. */
export function weekStrips(load: PeopleLoad, width: number): string[] {
  const shown = weeksUsed(load.people.map(({ asked }) => asked));
  if (shown === 0) return [];
  const longest = Math.max(...load.people.map(({ name }) => [...name].length));
  const names = Math.min(24, longest, Math.max(10, width - shown - 4));
  const room = Math.max(10, width - names - 4);
  const lines: string[] = [];
  for (let from = 0; from < shown; from += room) {
    const to = Math.min(shown, from + room);
    lines.push(`  ${" ".repeat(names)}  ${months(load.weeks.slice(from, to))}`.trimEnd());
    for (const person of load.people) {
      const strip = load.weeks
        .slice(from, to)
        .map((_, k) => signAt(person, from + k))
        .join("");
      const name = cut(person.name, names);
      lines.push(`  ${name}${" ".repeat(names - [...name].length)}  ${strip}`);
    }
  }
  return [
    ...wrap(
      "Load by week, plan as written: how full the capacity present is; × more than that, or asked for while away",
      width,
    ),
    ...lines,
  ];
}

function signAt({ asked, present, over, away }: PersonLoad, w: number): string {
  return sign(asked[w] ?? 0, present[w] ?? 0, (over[w] ?? 0) + (away[w] ?? 0));
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Everybody in figures: what is asked in all, the busiest week, and how often it is too much. */
export function personLines(load: PeopleLoad, width: number): string[] {
  if (load.people.length === 0) return [];
  const tooMuch = load.people.some(({ over }) => sum(over) > 0.005);
  const missed = load.people.some(({ away }) => sum(away) > 0.005);
  const columns: Column[] = [
    { heading: "person-days", align: "left" },
    { heading: "in all", align: "right" },
    { heading: "busiest week", align: "left" },
    { heading: "8 in 10", align: "right" },
    ...(tooMuch ? [{ heading: "weeks over", align: "right" } as const] : []),
    ...(missed ? [{ heading: "while away", align: "right" } as const] : []),
  ];
  const rows = load.people.map(({ name, asked, present, over, away, p80 }) => {
    const busiest = asked.indexOf(Math.max(...asked));
    const most = asked[busiest] ?? 0;
    return [
      name,
      columnDays(sum(asked)),
      most > 0
        ? `${columnDays(most)} of ${columnDays(present[busiest] ?? 0)}, ${formatDate(load.weeks[busiest] ?? "", "shortest")}`
        : "",
      columnDays(Math.max(0, ...p80)),
      ...(tooMuch ? [String(over.filter((days) => days > 0.005).length)] : []),
      ...(missed ? [columnDays(sum(away))] : []),
    ];
  });
  return [
    ...wrap(
      "Load in the plan as written; 8 in 10: what its fullest week stays within that often, over the futures" +
        (missed ? "; while away: somebody stands in, or the task goes on without" : ""),
      width,
    ),
    ...table(columns, rows, width),
    ...unlimitedLines(load, width),
  ];
}

/** Where work would pile up if nobody waited: it says who is short. */
function unlimitedLines(load: PeopleLoad, width: number): string[] {
  if (!load.respectCapacity) return [];
  const piled = load.people
    .map(({ name, unlimited }) => ({ name, days: sum(unlimited.over) }))
    .filter(({ days }) => days > 0.005)
    .sort((a, b) => b.days - a.days);
  if (piled.length === 0) return [];
  const named = piled.slice(0, 4).map(({ name, days }) => `${name} ${columnDays(days)}`);
  return wrap(`If nobody waited, person-days beyond capacity, as written: ${named.join(", ")}.`, width);
}

/** One person week by week, in figures. */
export function personWeeks(load: PeopleLoad, person: PersonLoad, width: number): string[] {
  const columns: Column[] = [
    { heading: "week of", align: "left" },
    { heading: "asked", align: "right" },
    { heading: "present", align: "right" },
    { heading: "over", align: "right" },
    { heading: "while away", align: "right" },
    { heading: "mean", align: "right" },
    { heading: "8 in 10", align: "right" },
  ];
  const rows = load.weeks
    .slice(0, weeksUsed([person.asked, person.p80]))
    .map((monday, w) => [
      formatDate(monday, "short"),
      ...[person.asked, person.present, person.over, person.away, person.mean, person.p80].map((row) =>
        columnDays(row[w] ?? 0),
      ),
    ]);
  const tasks = person.tasks.length === 0 ? "nothing" : person.tasks.join(", ");
  return [
    ...wrap(`${person.name}, person-days by week; named in ${tasks}`, width),
    ...table(columns, rows, width),
  ];
}
