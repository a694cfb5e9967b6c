import type { CalendarEvent } from "../calendar/writeCalendar.ts";
import type { Table } from "./tableOf.ts";

/** Days of a calendar as a table. */
export function eventTable(events: readonly CalendarEvent[]): Table {
  return {
    header: ["date", "what", "name", "details"],
    rows: events.map(({ date, category = "", summary, description = "" }) => [
      date,
      category,
      summary,
      description,
    ]),
  };
}
