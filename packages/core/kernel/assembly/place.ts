import { MAGIC, TOLERANCE } from "./layout";
import { dayOf, entry, finishMoment } from "./time";

/** Stores two values, or the first alone when the row ends between them. */
export function put(at: usize, value: v128, both: bool): void {
  if (both) v128.store(at, value);
  else v128.store64_lane(at, value, 0);
}

/** Two values, or the last of a row and 0: whatever lies behind a row stays out. */
function take(at: usize, both: bool): v128 {
  return both ? v128.load(at) : v128.load64_zero(at);
}

/** The larger lane of a running maximum. */
function largest(row: v128): f64 {
  const x = f64x2.extract_lane(row, 0);
  const y = f64x2.extract_lane(row, 1);
  return y > x ? y : x;
}

/** out = max(out, from). */
export function raiseTo(out: usize, from: usize, n: usize): void {
  const end = out + (n << 3);
  for (; out < end; out += 16) {
    put(out, f64x2.pmax(v128.load(out), v128.load(from)), out + 8 < end);
    from += 16;
  }
}

/** start = max(lower, earliest), finish = start + duration; the largest finish, at least 0. */
export function settleEveryDay(
  lower: usize,
  duration: usize,
  start: usize,
  finish: usize,
  earliest: f64,
  n: usize,
): f64 {
  const floor = f64x2.splat(earliest);
  let latest = f64x2.splat(0);
  const end = lower + (n << 3);
  for (; lower < end; lower += 16) {
    const s = f64x2.pmax(floor, v128.load(lower));
    let f = f64x2.add(s, v128.load(duration));
    const both = lower + 8 < end;
    put(start, s, both);
    put(finish, f, both);
    if (!both) f = f64x2.replace_lane(f, 1, 0);
    latest = f64x2.pmax(latest, f);
    duration += 16;
    start += 16;
    finish += 16;
  }
  return largest(latest);
}

/** The same on a calendar with days off; work of no length stands where its bound is. */
export function settleOnCalendar(
  days: usize,
  order: usize,
  last: f64,
  lower: usize,
  duration: usize,
  start: usize,
  finish: usize,
  earliest: f64,
  n: usize,
): f64 {
  const floor = f64x2.splat(earliest);
  const final = f64x2.splat(last);
  let latest = f64x2.splat(0);
  const end = lower + (n << 3);
  for (; lower < end; lower += 16) {
    const both = lower + 8 < end;
    const t = f64x2.pmax(floor, take(lower, both));
    const d = take(duration, both);
    const day = dayOf(t);
    const index = f64x2.add(day, f64x2.splat(MAGIC));
    const one = entry(days, index, 0);
    const two = entry(days, index, 1);
    const before = v128.shuffle<f64>(one, two, 0, 2);
    const first = v128.shuffle<f64>(one, two, 1, 3);
    // A day that works is the first working day from itself on; what is left of t counts on such a day alone.
    let part = f64x2.sub(t, day);
    part = v128.and(part, v128.and(f64x2.eq(first, day), f64x2.gt(part, f64x2.splat(0))));
    const w = f64x2.add(before, part);
    // w is t moved by whole days towards 0, so what did not round up to the next day there does not here: `before`
    // is the number of the working day on which w stands, and `first` its day.
    let s = f64x2.add(first, f64x2.sub(w, before));
    let f = finishMoment(order, final, f64x2.add(w, d));
    const point = f64x2.le(d, f64x2.splat(TOLERANCE));
    if (v128.any_true(point)) {
      s = v128.bitselect(t, s, point);
      f = v128.bitselect(t, f, point);
    }
    put(start, s, both);
    put(finish, f, both);
    if (!both) f = f64x2.replace_lane(f, 1, 0);
    latest = f64x2.pmax(latest, f);
    duration += 16;
    start += 16;
    finish += 16;
  }
  return largest(latest);
}

/** out = max(out, from + lag). */
export function raiseAfterEveryDay(out: usize, from: usize, lag: f64, n: usize): void {
  const lags = f64x2.splat(lag);
  const end = out + (n << 3);
  for (; out < end; out += 16) {
    put(out, f64x2.pmax(v128.load(out), f64x2.add(v128.load(from), lags)), out + 8 < end);
    from += 16;
  }
}

/** out = max(out, the moment `lag` > 0 working days from `from`). */
export function raiseAfterOnCalendar(
  days: usize,
  order: usize,
  last: f64,
  out: usize,
  from: usize,
  lag: f64,
  n: usize,
): void {
  const lags = f64x2.splat(lag);
  const final = f64x2.splat(last);
  const end = out + (n << 3);
  for (; out < end; out += 16) {
    const both = out + 8 < end;
    const t = take(from, both);
    const day = dayOf(t);
    const index = f64x2.add(day, f64x2.splat(MAGIC));
    const one = entry(days, index, 0);
    const two = entry(days, index, 1);
    let part = f64x2.sub(t, day);
    part = v128.and(
      part,
      v128.and(f64x2.eq(v128.shuffle<f64>(one, two, 1, 3), day), f64x2.gt(part, f64x2.splat(0))),
    );
    const w = f64x2.add(v128.shuffle<f64>(one, two, 0, 2), part);
    put(out, f64x2.pmax(v128.load(out), finishMoment(order, final, f64x2.add(w, lags))), both);
    from += 16;
  }
}

/** out = scale * from. */
export function scaleTo(out: usize, from: usize, scale: f64, n: usize): void {
  const scales = f64x2.splat(scale);
  const end = out + (n << 3);
  for (; out < end; out += 16) {
    put(out, f64x2.mul(v128.load(from), scales), out + 8 < end);
    from += 16;
  }
}
