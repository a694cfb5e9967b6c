import { tolerance } from "./tolerance.ts";

/** Moments past this day are an error that names the task (plan format): 100 years of 365.25 days. */
export const lastDay = 36525;

/** Stands for "never": the calendar has no working day within 366 days, or ends. Larger than `lastDay`. */
export const never = 1e7;

/**
 * Which days since the plan's start hold work, as lookup tables in both directions.
 *
 * `cum[d]` = working days before day d, d = 0 ... lastDay + 1. `nth[k]` = the day of working day k (0-based);
 * its last entry is `never`, so an index cut to `last` reads "no such day" without a branch. `everyDay`: work
 * and moments coincide, no table is needed.
 */
export interface WorkCalendar {
  everyDay: boolean;
  cum: Int32Array;
  nth: Int32Array;
  /** Index of the `never` entry in `nth`. */
  last: number;
}

/**
 * Builds the tables from one flag a day (1 = works), length `lastDay` + 1, or from a predicate on days. Working
 * days after a gap of more than 366 days are not reachable. Cost: about 0.1 ms, two arrays of that length.
 */
export function workCalendar(source: Uint8Array | ((day: number) => boolean)): WorkCalendar {
  const working =
    typeof source === "function"
      ? Uint8Array.from({ length: lastDay + 1 }, (_, day) => (source(day) ? 1 : 0))
      : source;
  const cum = new Int32Array(lastDay + 2);
  const nth = new Int32Array(lastDay + 2);
  let count = 0;
  let previous = -1;
  let broken = false;
  for (let day = 0; day <= lastDay; day++) {
    cum[day] = count;
    if (working[day] === 1 && !broken) {
      nth[count++] = day;
      previous = day;
    } else if (day - previous > 366) broken = true;
  }
  cum[lastDay + 1] = count;
  const everyDay = count === lastDay + 1;
  nth[count] = never;
  return { everyDay, cum, nth: nth.subarray(0, count + 1), last: count };
}

/** Work the calendar holds in [0, t], t >= 0. */
export function workAt(calendar: WorkCalendar, t: number): number {
  if (calendar.everyDay) return t;
  if (t >= lastDay + 1) return calendar.last;
  const { cum } = calendar;
  const day = Math.floor(t + tolerance);
  const before = cum[day] as number;
  const part = t - day;
  return part > 0 && (cum[day + 1] as number) > before ? before + part : before;
}

/** The moment at which work may begin once `w` working days are behind us: always inside a working day. */
export function startMoment(calendar: WorkCalendar, w: number): number {
  if (calendar.everyDay) return w;
  const k = Math.floor(w + tolerance);
  const part = w - k;
  const day = calendar.nth[k < calendar.last ? k : calendar.last] as number;
  return part > 0 ? day + part : day;
}

/** The least moment by which the calendar has held `w` working days; 0 for w <= 0. */
export function finishMoment(calendar: WorkCalendar, w: number): number {
  if (calendar.everyDay) return w;
  const k = Math.ceil(w - tolerance) - 1;
  if (k < 0) return 0;
  return (calendar.nth[k < calendar.last ? k : calendar.last] as number) + (w - k);
}

/** The first moment at or after t that holds work; `never` when there is none. */
export function nextWork(calendar: WorkCalendar, t: number): number {
  if (calendar.everyDay) return t;
  if (t >= lastDay + 1) return never;
  const day = Math.floor(t + tolerance);
  const before = calendar.cum[day] as number;
  if ((calendar.cum[day + 1] as number) > before) return t;
  return calendar.nth[before] as number;
}

/**
 * The moment `lag` working days from t. Positive: the least moment by which the calendar has held that much
 * since t. Negative: its mirror image, the greatest moment from which it holds that much until t. Zero: t.
 * May be negative when a lead reaches before the start.
 */
export function addWork(calendar: WorkCalendar, t: number, lag: number): number {
  if (calendar.everyDay || Math.abs(lag) <= tolerance) return t + lag;
  const w = workAt(calendar, t) + lag;
  if (lag > 0) return finishMoment(calendar, w);
  return w < -tolerance ? w : startMoment(calendar, w < 0 ? 0 : w);
}
