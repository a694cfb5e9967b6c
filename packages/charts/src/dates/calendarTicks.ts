import { formatDate } from "../words/formatDate.ts";
import { dayMs, dayToIso, isoToMs } from "./dayToIso.ts";

export interface CalendarTick {
  /** Days since the plan's start: the midnight that opens the interval. */
  day: number;
  label: string;
  /** The year, on the first tick and wherever it changes; else "". */
  year: string;
}

type Step = { unit: "day" | "month" | "year"; every: number; days: number };

const steps: Step[] = [
  { unit: "day", every: 1, days: 1 },
  { unit: "day", every: 7, days: 7 },
  { unit: "day", every: 14, days: 14 },
  { unit: "month", every: 1, days: 30.4 },
  { unit: "month", every: 2, days: 60.9 },
  { unit: "month", every: 3, days: 91.3 },
  { unit: "month", every: 6, days: 182.6 },
];

/**
 * Ticks at the start of days, weeks (Mondays), months or years: at most `most` of them, on round calendar
 * dates. A tick opens an interval, so its label belongs to the right of it.
 *
 * @param from,to  Days since `start`, from < to.
 */
export function calendarTicks(start: string, from: number, to: number, most: number): CalendarTick[] {
  const count = Math.max(2, most);
  const step =
    steps.find((each) => (to - from) / each.days <= count) ?? yearStep((to - from) / 365.25, count);
  const origin = isoToMs(start);
  const ticks: CalendarTick[] = [];
  let year = "";
  for (const day of opening(step, origin, from, to)) {
    const iso = dayToIso(start, day);
    if (iso.length !== 10) continue; // beyond year 9999
    const label =
      step.unit === "day"
        ? dayLabel(iso, step.every)
        : step.unit === "month"
          ? formatDate(iso, "shortest").replace(/^\d+ /, "")
          : iso.slice(0, 4);
    const now = iso.slice(0, 4);
    ticks.push({ day, label, year: step.unit === "year" || now === year ? "" : now });
    year = now;
  }
  return ticks;
}

function dayLabel(iso: string, every: number): string {
  return every === 1 ? formatDate(iso, "weekday-no-year").replace(/ \w+$/, "") : formatDate(iso, "shortest");
}

function yearStep(years: number, count: number): Step {
  let every = 1;
  for (const factor of [2, 2.5, 2, 2, 2.5, 2, 2, 2.5, 2]) {
    if (years / every <= count) break;
    every *= factor;
  }
  return { unit: "year", every, days: every * 365.25 };
}

function opening(step: Step, origin: number, from: number, to: number): number[] {
  const days: number[] = [];
  if (step.unit === "day") {
    // 5 January 1970 was a Monday: weeks are counted from there, so that every chart breaks on the same days.
    const shift = origin / dayMs - 4;
    let day = Math.ceil((from + shift) / step.every) * step.every - shift;
    for (; day <= to; day += step.every) days.push(day);
    return days;
  }
  const first = new Date(origin + Math.floor(from) * dayMs);
  const months = step.unit === "year" ? step.every * 12 : step.every;
  let month = first.getUTCFullYear() * 12 + (step.unit === "year" ? 0 : first.getUTCMonth());
  month = Math.floor(month / months) * months;
  for (; ; month += months) {
    const opens = new Date(0);
    opens.setUTCFullYear(Math.floor(month / 12), month % 12, 1);
    const day = (opens.getTime() - origin) / dayMs;
    if (!(day <= to)) return days;
    if (day >= from) days.push(day);
  }
}
