import {
  type CalendarEvent,
  documentOf,
  dueEvents,
  dueList,
  dueTable,
  estimateTable,
  eventTable,
  type Forecast,
  forecastTable,
  milestoneEvents,
  type Plan,
  type Table,
  type TableRow,
  tableOf,
  writeCalendar,
} from "@leeway/core";
import { jsonText } from "../output.ts";
import { csvText } from "./csvText.ts";

export const OF_PLAN = ["tasks", "estimates", "register", "people"] as const;
export const OF_FORECAST = ["forecast", "milestones", "communication"] as const;
export type What = (typeof OF_PLAN)[number] | (typeof OF_FORECAST)[number];
export type Format = "csv" | "json" | "ics";

/** The formats of each, the usual one first. */
export const FORMATS: Readonly<Record<What, readonly Format[]>> = {
  tasks: ["csv", "json"],
  estimates: ["csv", "json"],
  register: ["csv", "json"],
  people: ["csv", "json"],
  forecast: ["csv", "json"],
  milestones: ["ics", "csv", "json"],
  communication: ["ics", "csv", "json"],
};

export interface Exported {
  text: string;
  /** For the note that it was written, e.g. `12 rows`. */
  said: string;
}

/** Part of a plan as written, without a simulation. */
export function exportOfPlan(
  text: string,
  plan: Plan,
  what: (typeof OF_PLAN)[number],
  format: Format,
): Exported {
  const document = documentOf(text) ?? {};
  const table = what === "estimates" ? estimateTable(document) : tableOf(document, what);
  if (format === "csv") return { text: csvText(table), said: rows(table.rows.length) };
  const { title, sha256 } = plan;
  return {
    text: jsonText({ plan: { title, sha256 }, [what]: records(table) }),
    said: rows(table.rows.length),
  };
}

/** Part of a forecast; `stamp` is when the file is made. */
export function exportOfForecast(
  plan: Plan,
  forecast: Forecast,
  what: (typeof OF_FORECAST)[number],
  format: Format,
  stamp: string,
): Exported {
  if (what === "forecast") {
    if (format === "json") return { text: jsonText(forecast), said: "the forecast" };
    const table = forecastTable(forecast);
    return { text: csvText(table), said: rows(table.rows.length) };
  }
  const { seed, iterations, version, design } = forecast;
  const run = { plan: forecast.plan, seed, iterations, version, design };
  if (what === "milestones") return events(plan.title, milestoneEvents(plan, forecast), format, stamp, run);
  const list = dueList(plan, forecast);
  if (format === "ics")
    return events(`${plan.title}: communication`, dueEvents(plan, list), format, stamp, run);
  const said = rows(list.due.length);
  return { text: format === "csv" ? csvText(dueTable(list)) : jsonText({ ...run, ...list }), said };
}

function events(name: string, all: CalendarEvent[], format: Format, stamp: string, run: object): Exported {
  const said = all.length === 1 ? "1 event" : `${all.length} events`;
  if (format === "ics") return { text: writeCalendar(all, { name, stamp }), said };
  return { text: format === "csv" ? csvText(eventTable(all)) : jsonText({ ...run, events: all }), said };
}

function records({ header, rows: all }: Table): TableRow[] {
  return all.map((row) =>
    Object.fromEntries(
      header.map((key, k) => [key, row[k] ?? ""] as const).filter(([, value]) => value !== ""),
    ),
  );
}

function rows(count: number): string {
  return count === 1 ? "1 row" : `${count} rows`;
}
