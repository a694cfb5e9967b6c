import { type WorkCalendar, workCalendar } from "../../../packages/core/src/calendar/workCalendar.ts";
import { rng } from "./kernels.ts";

/** Calendars of all kinds: usual weeks, random days, long pauses, ends within the first year, no work at all. */
export const calendars: { name: string; calendar: WorkCalendar }[] = [
  { name: "every day", calendar: workCalendar(() => true) },
  { name: "five days of seven", calendar: workCalendar((day) => day % 7 < 5) },
  { name: "starting on a day off", calendar: workCalendar((day) => day % 7 > 1) },
  { name: "random days", calendar: randomDays(0.4) },
  { name: "rare days", calendar: randomDays(0.02) },
  { name: "a long pause", calendar: workCalendar((day) => day < 50 || day > 400) },
  { name: "ending on day 90", calendar: workCalendar((day) => day % 7 < 5 && day < 90) },
  { name: "no work", calendar: workCalendar(() => false) },
];

function randomDays(share: number): WorkCalendar {
  const random = rng(Math.round(share * 1000));
  return workCalendar(() => random() < share);
}
