import { dayNumber, isoDate } from "../../calendar/dates.ts";
import type { IsoDate } from "../../plan/types.ts";
import type { Count } from "../../units.ts";
import { version } from "../../version.ts";
import { contentLine, textValue } from "./contentLine.ts";

/** A whole day in a calendar, or a series of them. */
export interface CalendarEvent {
  /** The same for the same event in every export, so that a calendar updates it and does not double it. */
  uid: string;
  date: IsoDate;
  summary: string;
  description?: string;
  category?: string;
  /** How it recurs, `date` being the first. */
  every?: Recurrence;
}
/** How an entry of a calendar repeats. */
export interface Recurrence {
  unit: "week" | "month";
  /** Every how many units. */
  interval: Count;
  /** How often altogether, the first counted. */
  count: Count;
}
/** A calendar to be written (RFC 5545). */
export interface CalendarWriting {
  /** What it is called where it is opened. */
  name: string;
  /** When it is made: `2027-02-01T09:30:00Z`. There is no clock here. */
  stamp: string;
}

/**
 * Events as a calendar file that other programs open. Days are whole days without a time zone: the end is the day
 * after, as the standard has it, and nobody is shown as busy.
 *
 * Source  RFC 5545 (2009): 3.1 lines, 3.6.1 events, 3.8.5.3 recurrence, 3.8.7.2 stamp.
 */
export function writeCalendar(events: readonly CalendarEvent[], { name, stamp }: CalendarWriting): string {
  const stamped = stamp.replace(/\.\d+/, "").replace(/[-:]/g, "");
  const lines = [
    ["BEGIN", "VCALENDAR"],
    ["VERSION", "2.0"],
    ["PRODID", `-//Leeway//Leeway ${version}//EN`],
    ["CALSCALE", "GREGORIAN"],
    ["X-WR-CALNAME", textValue(name)],
    ...events.flatMap((event) => eventLines(event, stamped)),
    ["END", "VCALENDAR"],
  ];
  return lines.map(([key = "", value = ""]) => contentLine(key, value)).join("");
}

function eventLines(event: CalendarEvent, stamped: string): string[][] {
  const { uid, date, summary, description, category, every } = event;
  return [
    ["BEGIN", "VEVENT"],
    ["UID", textValue(uid)],
    ["DTSTAMP", stamped],
    ["DTSTART;VALUE=DATE", basic(date)],
    ["DTEND;VALUE=DATE", basic(isoDate(dayNumber(date) + 1))],
    ...(every === undefined ? [] : [["RRULE", rule(every)]]),
    ["SUMMARY", textValue(summary)],
    ...(description === undefined ? [] : [["DESCRIPTION", textValue(description)]]),
    ...(category === undefined ? [] : [["CATEGORIES", textValue(category)]]),
    ["TRANSP", "TRANSPARENT"],
    ["END", "VEVENT"],
  ];
}

function basic(date: IsoDate): string {
  return date.replaceAll("-", "");
}

function rule({ unit, interval, count }: Recurrence): string {
  const frequency = unit === "week" ? "WEEKLY" : "MONTHLY";
  return `FREQ=${frequency}${interval === 1 ? "" : `;INTERVAL=${interval}`};COUNT=${count}`;
}
