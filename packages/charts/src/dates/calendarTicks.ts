import { formatDate } from "../words/formatDate.ts";
import { dayMs, dayToIso, isoToMs } from "./dayToIso.ts";

export interface CalendarTick {
  /** Days since the plan's start: the midnight that opens the interval. */
  day: number;
  label: string;
  /** The year (month and year under single days), on the first tick and where it changes; else "". */
  below: string;
}

type Step = { unit: "day" | "month" | "year"; every: number; days: number };

const single: Step = { unit: "day", every: 1, days: 1 };
const steps: Step[] = [
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
  const span = to - from;
  // Single days keep a tick each, even where only every second or third has room for its name.
  const step =
    span <= 3 * count
      ? single
      : (steps.find((each) => span / each.days <= count) ?? yearStep(span / 365.25, count));
  const named = step === single ? Math.ceil(span / count) : 1;
  const ticks: CalendarTick[] = [];
  let above = "";
  opening(step, isoToMs(start), from, to).forEach((day, k) => {
    const iso = dayToIso(start, day);
    if (iso.length !== 10) return; // beyond year 9999
    if (k % named !== 0) {
      ticks.push({ day, label: "", below: "" });
      return;
    }
    const [label, below] = words(iso, step);
    ticks.push({ day, label, below: below === above ? "" : below });
    above = below;
  });
  return ticks;
}

/** The label of a tick, and what it lies in. */
function words(iso: string, step: Step): [string, string] {
  const year = iso.slice(0, 4);
  if (step.unit === "year") return [year, ""];
  const date = formatDate(iso, "shortest");
  const month = date.replace(/^\d+ /, "");
  if (step.unit === "month") return [month, year];
  if (step.every > 1) return [date, year];
  return [formatDate(iso, "weekday-no-year").replace(/ \w+$/, ""), `${month} ${year}`];
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
