import { MAGIC, TOLERANCE } from "./layout";

/** Two whole numbers, as doubles, read from a table of 32-bit integers at two whole indices. */
export function read(table: usize, index: v128): v128 {
  const at = f64x2.add(index, f64x2.splat(MAGIC));
  const one = v128.load32_zero(table + ((<usize>i32x4.extract_lane(at, 0)) << 2));
  return f64x2.convert_low_i32x4_s(
    v128.load32_lane(table + ((<usize>i32x4.extract_lane(at, 2)) << 2), one, 1),
  );
}

/** The day of a moment, at most 36,526: from there on nothing works. */
export function dayOf(t: v128): v128 {
  return f64x2.pmin(f64x2.splat(36526), f64x2.floor(f64x2.add(t, f64x2.splat(TOLERANCE))));
}

/** Work held in [0, t]. The entry after the end of `cum` repeats its last. */
export function workAt(cum: usize, t: v128): v128 {
  const day = dayOf(t);
  const before = read(cum, day);
  const part = f64x2.sub(t, day);
  const works = f64x2.gt(read(cum + 4, day), before);
  const counts = v128.and(works, f64x2.gt(part, f64x2.splat(0)));
  return f64x2.add(before, v128.and(part, counts));
}

/** The moment at which work may begin once w days of it are behind us. */
export function startMoment(nth: usize, last: v128, w: v128): v128 {
  const k = f64x2.floor(f64x2.add(w, f64x2.splat(TOLERANCE)));
  const part = f64x2.sub(w, k);
  const day = read(nth, f64x2.pmin(last, k));
  return f64x2.add(day, v128.and(part, f64x2.gt(part, f64x2.splat(0))));
}

/** The least moment by which w days of work have been held; w > 0. */
export function finishMoment(nth: usize, last: v128, w: v128): v128 {
  const k = f64x2.sub(f64x2.ceil(f64x2.sub(w, f64x2.splat(TOLERANCE))), f64x2.splat(1));
  const index = f64x2.pmax(f64x2.splat(0), f64x2.pmin(last, k));
  return f64x2.add(read(nth, index), f64x2.sub(w, k));
}
