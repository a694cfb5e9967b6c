// Open formats of a plan and of its forecast: loaded when one is asked for.
import {
  documentOf,
  dueEvents,
  dueList,
  type Forecast,
  forecastTable,
  milestoneEvents,
  type Plan,
  type Table,
  tableOf,
  writeCalendar,
  writeCsv,
} from "@leeway/core";

export type What = "tasks" | "register" | "forecast" | "forecast-json" | "milestones" | "communication";

export interface TableFile {
  text: string;
  type: string;
  /** Behind the name of the plan. */
  ending: string;
}

/**
 * @param text   The plan document as written.
 * @param plan   The plan of that text.
 * @param today  The day on which the file is made.
 */
export function tableFile(
  what: What,
  text: string,
  plan: Plan,
  forecast: Forecast,
  today: string,
): TableFile {
  const stamp = `${today}T00:00:00Z`;
  switch (what) {
    case "tasks":
    case "register":
      return csv(tableOf(documentOf(text) ?? {}, what), `${what}.csv`);
    case "forecast":
      return csv(forecastTable(forecast), "forecast.csv");
    case "forecast-json":
      return {
        text: `${JSON.stringify(forecast, undefined, 2)}\n`,
        type: "application/json",
        ending: "forecast.json",
      };
    case "milestones": {
      const calendar = writeCalendar(milestoneEvents(plan, forecast), { name: plan.title, stamp });
      return { text: calendar, type: "text/calendar", ending: "milestones.ics" };
    }
    case "communication": {
      const events = dueEvents(plan, dueList(plan, forecast));
      const calendar = writeCalendar(events, { name: `${plan.title}: communication`, stamp });
      return { text: calendar, type: "text/calendar", ending: "communication.ics" };
    }
  }
}

/** With a byte order mark where a spreadsheet would otherwise spoil a letter. */
function csv({ header, rows }: Table, ending: string): TableFile {
  const foreign = (cell: string | number) => typeof cell === "string" && /[^\p{ASCII}]/u.test(cell);
  const text = writeCsv(header, rows, { byteOrderMark: rows.some((row) => row.some(foreign)) });
  return { text, type: "text/csv", ending };
}
