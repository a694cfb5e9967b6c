import { TOLERANCE } from "./layout";

// One moment at a time, as in packages/core/src/calendar/workCalendar.ts and to the bit. A calendar is the two tables of
// time.ts; `days` 0: every day works.

/** The calendar ends here: a day later than the last moment there may be. */
const END: f64 = 36526;
const NEVER: f64 = 1e7;

function dayOf(order: usize, last: f64, k: f64): f64 {
  return load<f64>(order + ((<usize>(k < last ? k : last)) << 3));
}

/** Work held in [0, t]. */
export function workAt(days: usize, last: f64, t: f64): f64 {
  if (days === 0) return t;
  if (t >= END) return last;
  const day = Math.floor(t + TOLERANCE);
  const at = days + ((<usize>day) << 4);
  const before = load<f64>(at);
  const part = t - day;
  return part > 0 && load<f64>(at, 8) === day ? before + part : before;
}

/** The least moment by which w days of work have been held; 0 for w <= 0. */
export function finishAt(days: usize, order: usize, last: f64, w: f64): f64 {
  if (days === 0) return w;
  const k = Math.ceil(w - TOLERANCE) - 1;
  return k < 0 ? 0 : dayOf(order, last, k) + (w - k);
}

/** The first moment at or after t that holds work; 10,000,000: none. */
export function workFrom(days: usize, t: f64): f64 {
  if (days === 0) return t;
  if (t >= END) return NEVER;
  const day = Math.floor(t + TOLERANCE);
  const first = load<f64>(days + ((<usize>day) << 4), 8);
  return first === day ? t : first;
}

/** The moment at which work may begin once w working days are behind; always inside a working day. */
export function startAt(days: usize, order: usize, last: f64, w: f64): f64 {
  if (days === 0) return w;
  const k = Math.floor(w + TOLERANCE);
  const part = w - k;
  const day = dayOf(order, last, k);
  return part > 0 ? day + part : day;
}

/** The moment `lag` working days from t; before the start it may be negative. */
export function addWork(days: usize, order: usize, last: f64, t: f64, lag: f64): f64 {
  if (days === 0 || abs(lag) <= TOLERANCE) return t + lag;
  const w = workAt(days, last, t) + lag;
  if (lag > 0) return finishAt(days, order, last, w);
  return w < -TOLERANCE ? w : startAt(days, order, last, w < 0 ? 0 : w);
}
