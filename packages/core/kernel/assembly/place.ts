import { TOLERANCE } from "./layout";
import { finishMoment, startMoment, workAt } from "./time";

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
  cum: usize,
  nth: usize,
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
    const point = f64x2.le(d, f64x2.splat(TOLERANCE));
    const w = workAt(cum, t);
    const s = v128.bitselect(t, startMoment(nth, final, w), point);
    let f = v128.bitselect(t, finishMoment(nth, final, f64x2.add(w, d)), point);
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
