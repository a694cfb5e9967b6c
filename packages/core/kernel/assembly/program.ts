import { drawRecords } from "./drawMany";
import { fillLatin } from "./draws";
import { MAGIC, TOLERANCE } from "./layout";
import { lookUpOutcomes } from "./lookUp";
import { anySet, markFinish, markSimple, occur } from "./mark";
import { scaleTo } from "./place";
import {
  addCost,
  addCostWhere,
  addDailyCost,
  addImpact,
  addTaskCost,
  multiplyImpact,
  sumProductsInto,
} from "./sums";
import { dayOf, entry, finishMoment } from "./time";

// A program is what a block of a simulation does, step by step: written once from a model
// (packages/core/src/simulate/program/writeProgram.ts), carried out for every block by whoever has the memory.
//
// A step is a number of 32-bit words, the first of which says what it is; doubles stand at multiples of eight bytes.
// Addresses are of three kinds: of rows of the block, to which `rows` is added (each thread has its own); of rows of all
// iterations, to which `place` (moments) or `top` (the plan's finish and cost) is added; and of what all blocks read. Starts
// may be kept or not, so they have a beginning of their own, `starts`.
// What a step tells goes to the block's answers, at an offset.

/** Stands for a row that is not there. */
const NONE: u32 = 0xffffffff;

/**
 * Carries out a program for one block of n iterations. `seed`: from the beginning of a stream's words to those of the
 * block. Returns where in the program a task ran past day 36,525, or -1.
 */
export function runProgram(
  program: usize,
  rows: usize,
  place: usize,
  starts: usize,
  top: usize,
  told: usize,
  seed: usize,
  n: usize,
): i32 {
  let p = program;
  for (;;) {
    const op = load<u32>(p);
    if (op === 16) {
      const links = <usize>load<u32>(p, 4);
      const days = <usize>load<u32>(p, 20);
      const duration = rows + load<u32>(p, 8);
      const start = starts + load<u32>(p, 12);
      const finish = place + load<u32>(p, 16);
      const list = p + 56;
      const lower = boundBy(list, links, place, start, rows + load<u32>(p, 32), n);
      const a = lower;
      const b = links > 1 && links <= 3 ? place + load<u32>(list, 4) : lower;
      const c = links === 3 ? place + load<u32>(list, 8) : b;
      const planFinish = top + load<u32>(p, 28);
      const latest =
        days === 0
          ? placeEveryDay(a, b, c, duration, start, finish, planFinish, load<f64>(p, 40), n)
          : placeOnCalendar(
              days,
              load<u32>(p, 24),
              load<f64>(p, 48),
              a,
              b,
              c,
              duration,
              start,
              finish,
              planFinish,
              load<f64>(p, 40),
              n,
            );
      store<f64>(rows + load<u32>(p, 36), latest);
      if (latest > 36525.0) return p - program;
      p = list + (((links + 1) >> 1) << 3);
    } else if (op === 20) {
      const links = <usize>load<u32>(p, 4);
      const duration = rows + load<u32>(p, 8);
      const moves = rows + load<u32>(p, 12);
      const start = starts + load<u32>(p, 16);
      const days = <usize>load<u32>(p, 20);
      const list = p + 56;
      if (anySet(moves, n)) {
        sumMoving(duration, moves, load<f64>(p, 32), told + load<u32>(p, 24), n);
        const gap = load<f64>(p, 40);
        const end = load<f64>(p, 48);
        const placing = load<u32>(p, 28);
        if (placing !== 0 && links > 0) {
          const step = program + placing;
          startsFrom(step, start, place, rows + load<u32>(step, 32), n);
        }
        const last = list + (links << 3);
        for (let at = list; at < last; at += 8) {
          markSimple(days, gap, end, rows + load<u32>(at), moves, place + load<u32>(at, 4), start, n);
        }
      }
      p = list + (links << 3);
    } else if (op === 14) {
      store<f64>(
        told + load<u32>(p, 16),
        addDailyCost(
          top + load<u32>(p, 4),
          rows + load<u32>(p, 8),
          load<f64>(p, 24),
          rows + load<u32>(p, 12),
          n,
        ),
      );
      p += 32;
    } else if (op === 11) {
      sumDuration(rows + load<u32>(p, 4), told + load<u32>(p, 8), n);
      p += 16;
    } else if (op === 19) {
      beginMarks(p, rows, place, top, n);
      p += 48;
    } else if (op === 1) {
      drawRecords(load<u32>(p, 8), load<u32>(p, 4), seed, n, rows, told);
      p += 16;
    } else if (op === 2) {
      const words = <usize>load<u32>(p, 4) + seed;
      const out = rows + load<u32>(p, 8);
      fillLatin(load<u32>(words), load<u32>(words, 4), load<u32>(words, 8), load<u32>(words, 12), out);
      p += 16;
    } else if (op === 3) {
      occur(rows + load<u32>(p, 4), load<f64>(p, 16), load<f64>(p, 24), rows + load<u32>(p, 8), n);
      p += 32;
    } else if (op === 4) {
      const out = (load<u32>(p, 8) ? top : rows) + load<u32>(p, 4);
      fill(out, load<f64>(p, 16), n);
      p += 24;
    } else if (op === 5) {
      memory.fill(rows + load<u32>(p, 4), <u8>load<u32>(p, 8), n);
      p += 16;
    } else if (op === 6) {
      const below = lookUpOutcomes(
        load<u32>(p, 4),
        load<u32>(p, 8),
        load<u32>(p, 12),
        rows + load<u32>(p, 16),
        rows + load<u32>(p, 20),
        n,
        load<u32>(p, 24),
      );
      if (below > 0) {
        const at = told + load<u32>(p, 28);
        store<u32>(at, load<u32>(at) + <u32>below);
      }
      p += 32;
    } else if (op === 7) {
      scaleTo(rows + load<u32>(p, 4), rows + load<u32>(p, 8), load<f64>(p, 16), n);
      p += 24;
    } else if (op === 8) {
      multiplyImpact(
        rows + load<u32>(p, 4),
        rows + load<u32>(p, 8),
        rows + load<u32>(p, 12),
        load<f64>(p, 16),
        n,
      );
      p += 24;
    } else if (op === 9) {
      addImpact(rows + load<u32>(p, 4), rows + load<u32>(p, 8), rows + load<u32>(p, 12), load<f64>(p, 16), n);
      p += 24;
    } else if (op === 12) {
      store<f64>(told + load<u32>(p, 12), addCost(top + load<u32>(p, 4), rows + load<u32>(p, 8), n));
      p += 16;
    } else if (op === 13) {
      store<f64>(
        told + load<u32>(p, 20),
        addTaskCost(
          top + load<u32>(p, 4),
          rows + load<u32>(p, 8),
          rows + load<u32>(p, 12),
          load<f64>(p, 24),
          rows + load<u32>(p, 16),
          n,
        ),
      );
      p += 32;
    } else if (op === 15) {
      store<f64>(
        told + load<u32>(p, 16),
        addCostWhere(
          top + load<u32>(p, 4),
          rows + load<u32>(p, 8),
          rows + load<u32>(p, 12),
          load<f64>(p, 24),
          n,
        ),
      );
      p += 32;
    } else if (op === 17) {
      memory.fill(told, 0, load<u32>(p, 4));
      p += 8;
    } else if (op === 18) {
      datesOf(top + load<u32>(p, 4), (top >> 1) + load<u32>(p, 8), rows + load<u32>(p, 12), n);
      p += 16;
    } else if (op === 21) {
      sumImpact(p, rows, told, n);
      p += 96;
    } else if (op === 22) {
      sumProductsInto(rows + load<u32>(p, 4), rows + load<u32>(p, 8), n, told + load<u32>(p, 12));
      p += 16;
    } else break;
  }
  return -1;
}

function fill(out: usize, value: f64, n: usize): void {
  const two = f64x2.splat(value);
  const end = out + (n << 3);
  for (; out + 8 < end; out += 16) v128.store(out, two);
  if (out < end) store<f64>(out, value);
}

/** The first bound; a row of 0 where there is none; more than three are gathered where the start will stand. */
function boundBy(list: usize, links: usize, place: usize, start: usize, zero: usize, n: usize): usize {
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
function placeEveryDay(
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
function placeOnCalendar(
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
function datesOf(planFinish: usize, out: usize, least: usize, n: usize): void {
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

/** `markFinish`, which need not be looked at where even the latest finish of the task is far from the plan's. */
function beginMarks(p: usize, rows: usize, place: usize, top: usize, n: usize): void {
  const moves = rows + load<u32>(p, 8);
  const days = <usize>load<u32>(p, 16);
  const gap = load<f64>(p, 32);
  const end = load<f64>(p, 40);
  const latest = load<f64>(rows + load<u32>(p, 12));
  const moment = load<f64>(rows + load<u32>(p, 24)) - TOLERANCE;
  const far = days === 0 ? latest < moment : latest < min(end, moment - gap);
  if (far) memory.fill(moves, 0, n);
  else markFinish(days, gap, end, top + load<u32>(p, 20), place + load<u32>(p, 4), moves, n);
}

/** Sums stand in four lanes, iteration k in lane k mod 4, and are added up in pairs at the end. */
function total(a: v128, b: v128): f64 {
  return (
    f64x2.extract_lane(a, 0) +
    f64x2.extract_lane(a, 1) +
    (f64x2.extract_lane(b, 0) + f64x2.extract_lane(b, 1))
  );
}

/** The second and fourth answer of `sumMasked`: sum of the durations, and how many have no length. */
function sumDuration(duration: usize, out: usize, n: usize): void {
  const least = f64x2.splat(TOLERANCE);
  let s = f64x2.splat(0);
  let t = f64x2.splat(0);
  let points = i64x2.splat(0);
  let left = n;
  for (; left >= 4; left -= 4) {
    const x = v128.load(duration);
    const y = v128.load(duration, 16);
    s = f64x2.add(s, x);
    t = f64x2.add(t, y);
    points = i64x2.sub(points, i64x2.add(f64x2.le(x, least), f64x2.le(y, least)));
    duration += 32;
  }
  let few = <f64>(i64x2.extract_lane(points, 0) + i64x2.extract_lane(points, 1));
  // What is left of a row that ends within four.
  if (left > 0) {
    const x = left > 1 ? v128.load(duration) : v128.load64_zero(duration);
    const y = left > 2 ? v128.load64_zero(duration, 16) : f64x2.splat(0);
    s = f64x2.add(s, x);
    t = f64x2.add(t, y);
    for (let k: usize = 0; k < left; k++) few += <f64>(load<f64>(duration + (k << 3)) <= TOLERANCE);
  }
  store<f64>(out, total(s, t));
  store<f64>(out, few, 8);
}

/** The first and third answer of `sumMasked`: sum of duration - base where it moves, and how many move. */
function sumMoving(duration: usize, moves: usize, base: f64, out: usize, n: usize): void {
  let s0: f64 = 0;
  let s1: f64 = 0;
  let s2: f64 = 0;
  let s3: f64 = 0;
  let moving = 0;
  for (let k: usize = 0; k < n; k += 8) {
    let eight = load<u64>(moves + k);
    if (n - k < 8) eight &= ((<u64>1) << ((<u64>(n - k)) << 3)) - 1;
    if (eight === 0) continue;
    moving += <i32>popcnt(eight);
    const at = duration + (k << 3);
    if ((eight & 0xff) !== 0) s0 += load<f64>(at) - base;
    if ((eight & 0xff00) !== 0) s1 += load<f64>(at, 8) - base;
    if ((eight & 0xff0000) !== 0) s2 += load<f64>(at, 16) - base;
    if ((eight & 0xff000000) !== 0) s3 += load<f64>(at, 24) - base;
    if ((eight & 0xff00000000) !== 0) s0 += load<f64>(at, 32) - base;
    if ((eight & 0xff0000000000) !== 0) s1 += load<f64>(at, 40) - base;
    if ((eight & 0xff000000000000) !== 0) s2 += load<f64>(at, 48) - base;
    if ((eight & 0xff00000000000000) !== 0) s3 += load<f64>(at, 56) - base;
  }
  store<f64>(out, s0 + s1 + (s2 + s3));
  store<f64>(out, <f64>moving, 8);
}

/** An amount in iteration k: of its row, or the same in all. */
function amount(row: u32, rows: usize, value: f64, k: usize): f64 {
  return row === NONE ? value : load<f64>(rows + row + (k << 3));
}

/** What one impact added to one task, as `impactOn` of packages/core/src/simulate/tally.ts: days where it moves, money. */
function sumImpact(p: usize, rows: usize, told: usize, n: usize): void {
  const occurs = rows + load<u32>(p, 4);
  const moves = rows + load<u32>(p, 8);
  const delay = load<u32>(p, 12);
  const factor = load<u32>(p, 16);
  const sampled = load<u32>(p, 20);
  const perDay = load<u32>(p, 24);
  const kinds = load<u32>(p, 28);
  const out = told + load<u32>(p, 32);
  const delayScale = load<f64>(p, 40);
  const delayValue = load<f64>(p, 48);
  const factorScale = load<f64>(p, 56);
  const factorValue = load<f64>(p, 64);
  const durationScale = load<f64>(p, 72);
  const perDayValue = load<f64>(p, 80);
  const people = load<f64>(p, 88);
  let inDuration: f64 = 0;
  let money: f64 = 0;
  for (let k: usize = 0; k < n; k++) {
    if (load<u8>(occurs + k) === 0) continue;
    let days: f64 = 0;
    if ((kinds & 1) !== 0) days += delayScale * amount(delay, rows, delayValue, k);
    if ((kinds & 2) !== 0) {
      const draw = load<f64>(rows + sampled + (k << 3)) * durationScale;
      days += draw * factorScale * (amount(factor, rows, factorValue, k) - 1.0);
    }
    money += days * (amount(perDay, rows, perDayValue, k) + people);
    if (load<u8>(moves + k) !== 0) inDuration += days;
  }
  store<f64>(out, inDuration);
  store<f64>(out, money, 8);
}

/**
 * The starts of a task in iterations 0 ... n - 1, from where its placing stands in the program and from finishes that are
 * kept: as `place` set them, to the bit. Work that has no length in an iteration ends where its bound is, and only such.
 */
export function startsOf(p: usize, out: usize, zero: usize, n: usize): void {
  startsFrom(p, out, 0, zero, n);
}

/** The same of n iterations from `place` on. */
function startsFrom(p: usize, out: usize, place: usize, zero: usize, n: usize): void {
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
