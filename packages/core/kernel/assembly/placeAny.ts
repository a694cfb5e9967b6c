import { TOLERANCE } from "./layout";
import { addWork, finishAt, startAt, workAt, workFrom } from "./moments";

// Placing as in packages/core/src/kernel/twins/settleAny.ts and to the bit. A row at address 0 is none.

/** out = max(out, from + lag), the lag drawn (`lags`) or `value`, times `scale`. */
export function raiseBy(
  days: usize,
  order: usize,
  last: f64,
  out: usize,
  from: usize,
  lags: usize,
  value: f64,
  scale: f64,
  n: usize,
): void {
  for (let at: usize = 0; at < n << 3; at += 8) {
    const lag = (lags === 0 ? value : load<f64>(lags + at)) * scale;
    const bound = addWork(days, order, last, load<f64>(from + at), lag);
    if (bound > load<f64>(out + at)) store<f64>(out + at, bound);
  }
}

/** Start and finish in every case: waits, required finishes, tasks not needed, milestones; the largest finish. */
export function settleAny(
  days: usize,
  order: usize,
  last: f64,
  ownDays: usize,
  ownOrder: usize,
  ownLast: f64,
  lower: usize,
  upper: usize,
  needed: usize,
  waits: usize,
  duration: usize,
  start: usize,
  finish: usize,
  notBefore: f64,
  floor: f64,
  statusFloor: f64,
  startsWork: i32,
  n: usize,
): f64 {
  let latest: f64 = 0;
  for (let k: usize = 0; k < n; k++) {
    const at = k << 3;
    let s = load<f64>(lower + at);
    let b: f64 = upper === 0 ? 0 : load<f64>(upper + at);
    let f: f64 = 0;
    if (needed !== 0 && load<u8>(needed + k) === 0) {
      s = max(s, max(b, statusFloor));
      f = s;
    } else {
      if (notBefore > s) s = notBefore;
      const wait: f64 = waits === 0 ? 0 : load<f64>(waits + at);
      if (wait > TOLERANCE) {
        s = addWork(ownDays, ownOrder, ownLast, s, wait);
        if (upper !== 0) b = addWork(ownDays, ownOrder, ownLast, b, wait);
      }
      if (floor > s) s = floor;
      const d = load<f64>(duration + at);
      if (startsWork) {
        s = workFrom(days, s > b ? s : b);
        f = s;
      } else if (d <= TOLERANCE) {
        s = s > b ? s : b;
        f = s;
      } else {
        let w = workAt(days, last, s);
        if (upper !== 0) {
          const latestStart = workAt(days, last, b) - d;
          if (latestStart > w) w = latestStart;
        }
        s = startAt(days, order, last, w);
        f = finishAt(days, order, last, w + d);
      }
    }
    store<f64>(start + at, s);
    store<f64>(finish + at, f);
    if (f > latest) latest = f;
  }
  return latest;
}

/** The largest of a row, at least 0. */
export function largestOf(row: usize, n: usize): f64 {
  let most: f64 = 0;
  for (const end = row + (n << 3); row < end; row += 8) {
    const value = load<f64>(row);
    if (value > most) most = value;
  }
  return most;
}

/** Amounts for a day become amounts for the work in [from, to], 0 where there is none; `from` 0: since the start. */
export function scaleByWork(days: usize, last: f64, amounts: usize, from: usize, to: usize, n: usize): void {
  for (let at: usize = 0; at < n << 3; at += 8) {
    const before: f64 = from === 0 ? 0 : workAt(days, last, load<f64>(from + at));
    const held = workAt(days, last, load<f64>(to + at)) - before;
    store<f64>(amounts + at, held > 0 ? load<f64>(amounts + at) * held : 0);
  }
}
