import { MAGIC, TOLERANCE } from "./layout";

// A calendar is two tables of doubles, made by packages/core/src/kernel/arena.ts:
//   days   by day, two entries: working days before it, and the first working day from it on (10,000,000: none);
//   order  by number of working day: its day; the last entry is 10,000,000.

/** Two doubles of a table at two whole indices. */
export function read(table: usize, index: v128): v128 {
  const at = f64x2.add(index, f64x2.splat(MAGIC));
  const one = v128.load64_zero(table + ((<usize>i32x4.extract_lane(at, 0)) << 3));
  return v128.load64_lane(table + ((<usize>i32x4.extract_lane(at, 2)) << 3), one, 1);
}

/** The day of a moment, at most 36,526: from there on nothing works. */
export function dayOf(t: v128): v128 {
  return f64x2.pmin(f64x2.splat(36526), f64x2.floor(f64x2.add(t, f64x2.splat(TOLERANCE))));
}

/** The entries of `days` of the two days: before and first, one after the other. */
export function entry(days: usize, index: v128, lane: i32): v128 {
  return v128.load(
    days + ((<usize>(lane ? i32x4.extract_lane(index, 2) : i32x4.extract_lane(index, 0))) << 4),
  );
}

/** The least moment by which w days of work have been held; w > 0. */
export function finishMoment(order: usize, last: v128, w: v128): v128 {
  const k = f64x2.sub(f64x2.ceil(f64x2.sub(w, f64x2.splat(TOLERANCE))), f64x2.splat(1));
  const index = f64x2.pmax(f64x2.splat(0), f64x2.pmin(last, k));
  return f64x2.add(read(order, index), f64x2.sub(w, k));
}
