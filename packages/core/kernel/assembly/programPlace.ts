import { MAGIC, TOLERANCE } from "./layout";
import { dayOf, entry, finishMoment } from "./time";

// The steps of a program (program.ts) that place tasks.

/** The first bound; a row of 0 where there is none; more than three are gathered where the start will stand. */
export function boundBy(list: usize, links: usize, place: usize, start: usize, zero: usize, n: usize): usize {
  if (links === 0) return zero;
  const first = place + load<u32>(list);
  if (links <= 3) return first;
  const end = start + (n << 3);
  const last = list + (links << 2);
  for (let out = start; out < end; out += 16) {
    const off = out - start;
    let s = v128.load(first + off);
    for (let at = list + 4; at < last; at += 4) s = f64x2.pmax(s, v128.load(place + load<u32>(at) + off));
    if (out + 8 < end) v128.store(out, s);
    else v128.store64_lane(out, s, 0);
  }
  return start;
}

function put(at: usize, value: v128, both: bool): void {
  if (both) v128.store(at, value);
  else v128.store64_lane(at, value, 0);
}

function take(at: usize, both: bool): v128 {
  return both ? v128.load(at) : v128.load64_zero(at);
}

function largest(row: v128): f64 {
  const x = f64x2.extract_lane(row, 0);
  const y = f64x2.extract_lane(row, 1);
  return y > x ? y : x;
}

/** `settleEveryDay` from the latest of three bounds; raises the plan's finish too. */
export function placeEveryDay(
  a: usize,
  b: usize,
  c: usize,
  duration: usize,
  start: usize,
  finish: usize,
  planFinish: usize,
  earliest: f64,
  n: usize,
): f64 {
  const floor = f64x2.splat(earliest);
  let latest = f64x2.splat(0);
  const pairs = (n >> 1) << 4;
  for (let k: usize = 0; k < pairs; k += 16) {
    const bound = f64x2.pmax(f64x2.pmax(v128.load(a + k), v128.load(b + k)), v128.load(c + k));
    const s = f64x2.pmax(floor, bound);
    const f = f64x2.add(s, v128.load(duration + k));
    v128.store(start + k, s);
    v128.store(finish + k, f);
    v128.store(planFinish + k, f64x2.pmax(v128.load(planFinish + k), f));
    latest = f64x2.pmax(latest, f);
  }
  if ((n & 1) !== 0) {
    const bound = f64x2.pmax(
      f64x2.pmax(v128.load64_zero(a + pairs), v128.load64_zero(b + pairs)),
      v128.load64_zero(c + pairs),
    );
    const s = f64x2.pmax(floor, bound);
    const f = f64x2.add(s, v128.load64_zero(duration + pairs));
    v128.store64_lane(start + pairs, s, 0);
    v128.store64_lane(finish + pairs, f, 0);
    v128.store64_lane(planFinish + pairs, f64x2.pmax(v128.load64_zero(planFinish + pairs), f), 0);
    latest = f64x2.pmax(latest, f64x2.replace_lane(f, 1, 0));
  }
  return largest(latest);
}

/** `settleOnCalendar`, for work that is never a point, likewise. */
export function placeOnCalendar(
  days: usize,
  order: usize,
  last: f64,
  a: usize,
  b: usize,
  c: usize,
  duration: usize,
  start: usize,
  finish: usize,
  planFinish: usize,
  earliest: f64,
  n: usize,
): f64 {
  const floor = f64x2.splat(earliest);
  const final = f64x2.splat(last);
  let latest = f64x2.splat(0);
  const end = n << 3;
  for (let k: usize = 0; k < end; k += 16) {
    const both = k + 8 < end;
    const bound = f64x2.pmax(f64x2.pmax(take(a + k, both), take(b + k, both)), take(c + k, both));
    const t = f64x2.pmax(floor, bound);
    const d = take(duration + k, both);
    const day = dayOf(t);
    const index = f64x2.add(day, f64x2.splat(MAGIC));
    const one = entry(days, index, 0);
    const two = entry(days, index, 1);
    const before = v128.shuffle<f64>(one, two, 0, 2);
    const first = v128.shuffle<f64>(one, two, 1, 3);
    // As in `settleOnCalendar`.
    let part = f64x2.sub(t, day);
    part = v128.and(part, v128.and(f64x2.eq(first, day), f64x2.gt(part, f64x2.splat(0))));
    const w = f64x2.add(before, part);
    let s = f64x2.add(first, f64x2.sub(w, before));
    let f = finishMoment(order, final, f64x2.add(w, d));
    const point = f64x2.le(d, f64x2.splat(TOLERANCE));
    if (v128.any_true(point)) {
      s = v128.bitselect(t, s, point);
      f = v128.bitselect(t, f, point);
    }
    put(start + k, s, both);
    put(finish + k, f, both);
    put(planFinish + k, f64x2.pmax(take(planFinish + k, both), f), both);
    if (!both) f = f64x2.replace_lane(f, 1, 0);
    latest = f64x2.pmax(latest, f);
  }
  return largest(latest);
}

/** The days that the plan's finishes fall on, and the smallest finish. */
export function datesOf(planFinish: usize, out: usize, least: usize, n: usize): void {
  let smallest: f64 = Infinity;
  const end = out + (n << 2);
  for (; out < end; out += 4) {
    const f = load<f64>(planFinish);
    if (f < smallest) smallest = f;
    const day = Math.ceil(f - TOLERANCE) - 1;
    store<i32>(out, day > 0 ? <i32>day : 0);
    planFinish += 8;
  }
  store<f64>(least, smallest);
}

/**
 * The starts of a task in iterations 0 ... n - 1, from where its placing stands in the program and from finishes that are
 * kept: as `place` set them, to the bit. Work that has no length in an iteration ends where its bound is, and only such.
 */
export function startsOf(p: usize, out: usize, zero: usize, n: usize): void {
  startsFrom(p, out, 0, zero, n);
}

/** The same of n iterations from `place` on. */
export function startsFrom(p: usize, out: usize, place: usize, zero: usize, n: usize): void {
  const links = <usize>load<u32>(p, 4);
  const days = <usize>load<u32>(p, 20);
  const list = p + 56;
  const a = boundBy(list, links, place, out, zero, n);
  const b = links > 1 && links <= 3 ? place + load<u32>(list, 4) : a;
  const c = links === 3 ? place + load<u32>(list, 8) : b;
  const floor = f64x2.splat(load<f64>(p, 40));
  const end = n << 3;
  if (days === 0) {
    for (let k: usize = 0; k < end; k += 16) {
      const bound = f64x2.pmax(f64x2.pmax(v128.load(a + k), v128.load(b + k)), v128.load(c + k));
      v128.store(out + k, f64x2.pmax(floor, bound));
    }
    return;
  }
  const finish = place + load<u32>(p, 16);
  for (let k: usize = 0; k < end; k += 16) {
    const both = k + 8 < end;
    const bound = f64x2.pmax(f64x2.pmax(take(a + k, both), take(b + k, both)), take(c + k, both));
    const t = f64x2.pmax(floor, bound);
    const day = dayOf(t);
    const index = f64x2.add(day, f64x2.splat(MAGIC));
    const one = entry(days, index, 0);
    const two = entry(days, index, 1);
    const before = v128.shuffle<f64>(one, two, 0, 2);
    const first = v128.shuffle<f64>(one, two, 1, 3);
    let part = f64x2.sub(t, day);
    part = v128.and(part, v128.and(f64x2.eq(first, day), f64x2.gt(part, f64x2.splat(0))));
    const s = f64x2.add(first, f64x2.sub(f64x2.add(before, part), before));
    v128.store(out + k, v128.bitselect(t, s, f64x2.eq(take(finish + k, both), t)));
  }
}
