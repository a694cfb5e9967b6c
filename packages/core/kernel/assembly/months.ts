import { TOLERANCE } from "./layout";
import { workAt } from "./moments";

// Months as in packages/core/src/kernel/types.ts (`Ledger`): `ends` has `count` moments, `byDay` a byte for each of
// `known` days, and month m of iteration k is booked at entry m * stride + k.

/** The first month that does not end before t; the last takes the rest. */
function monthOf(byDay: usize, known: f64, count: usize, t: f64): usize {
  const day = Math.ceil(t - TOLERANCE);
  if (day <= 0) return 0;
  return day < known ? load<u8>(byDay + <usize>day) : count - 1;
}

function add(at: usize, amount: f64): void {
  store<f64>(at, load<f64>(at) + amount);
}

/** Amounts at moments. */
export function bookByMonth(
  count: usize,
  byDay: usize,
  known: f64,
  booked: usize,
  stride: usize,
  moments: usize,
  amounts: usize,
  n: usize,
): void {
  const row = stride << 3;
  for (let at: usize = 0; at < n << 3; at += 8) {
    const month = monthOf(byDay, known, count, load<f64>(moments + at));
    add(booked + month * row + at, load<f64>(amounts + at));
  }
}

/** Amounts over the work in [start, finish]: each in all, or for each day of work (`daily`). */
export function spreadByMonth(
  days: usize,
  last: f64,
  ends: usize,
  count: usize,
  byDay: usize,
  known: f64,
  booked: usize,
  stride: usize,
  start: usize,
  finish: usize,
  amounts: usize,
  daily: i32,
  n: usize,
): void {
  const row = stride << 3;
  for (let at: usize = 0; at < n << 3; at += 8) {
    let rate = load<f64>(amounts + at);
    if (!daily && rate === 0) continue;
    const s = load<f64>(start + at);
    const f = load<f64>(finish + at);
    let done = workAt(days, last, s);
    if (!daily) {
      const all = f - s <= TOLERANCE ? 0 : workAt(days, last, f) - done;
      if (all <= TOLERANCE) {
        add(booked + monthOf(byDay, known, count, f) * row + at, rate);
        continue;
      }
      rate /= all;
    }
    for (let month = monthOf(byDay, known, count, s); month < count; month++) {
      let end = f;
      if (month < count - 1) {
        const close = load<f64>(ends + (month << 3));
        if (close < f) end = close;
      }
      const upTo = workAt(days, last, end);
      if (upTo > done) {
        add(booked + month * row + at, rate * (upTo - done));
        done = upTo;
      }
      if (end >= f) break;
    }
  }
}
