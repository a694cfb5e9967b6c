import { BINS } from "./layout";

// A bracket is five doubles: its low end L and high end H, how many values were below L, equal to L, and equal to H
// (0 where H = L). Ends are 0 or more, or infinite; brackets ascend, and the insides (L, H) have no value in common.
const STRIDE: usize = 40;

/** So many values at a time, a multiple of four: what one pass marks is still at hand in the next. */
const PIECE: usize = 1024;
// At BINS: a word for each four values of which one is in a bracket, their place and in its lowest four bits which. Then a
// copy of a piece.
const COPY: usize = 4096;

/** The key of a value, an integer in the same order: the high half of its bits; 0 for values below 0. */
function keyOf(value: f64): i32 {
  return max(0, <i32>(reinterpret<i64>(value) >> 32));
}

/** The keys of four values. */
function keysOf(a: v128, b: v128): v128 {
  return i32x4.max_s(v128.shuffle<i32>(a, b, 1, 3, 5, 7), i32x4.splat(0));
}

/** The key of a low end; below every key where the end is -Infinity. */
function lowKey(bracket: usize): i32 {
  return <i32>(load<i64>(bracket) >> 32);
}

function highKey(bracket: usize): i32 {
  return <i32>(load<i64>(bracket, 8) >> 32);
}

function countUp(at: usize, offset: usize): void {
  store<f64>(at + offset, load<f64>(at + offset) + 1);
}

/**
 * Holds one value against each bracket, exactly; where it is inside one it is stored at `tail`. `marked`: only what
 * counting by keys left open is counted. The next tail.
 */
function meet(value: f64, brackets: usize, width: usize, marked: bool, tail: usize): usize {
  const key = keyOf(value);
  const end = brackets + width * STRIDE;
  for (let at = brackets; at < end; at += STRIDE) {
    const low = load<f64>(at);
    const high = load<f64>(at, 8);
    if (value < low) {
      if (!marked || key >= lowKey(at)) countUp(at, 16);
    } else if (value === low) countUp(at, 24);
    else if (value < high) {
      store<f64>(tail, value);
      tail += 8;
    } else if (value === high) countUp(at, 32);
  }
  return tail;
}

function addLanes(at: usize, counts: v128): void {
  const sum =
    i32x4.extract_lane(counts, 0) +
    i32x4.extract_lane(counts, 1) +
    i32x4.extract_lane(counts, 2) +
    i32x4.extract_lane(counts, 3);
  store<f64>(at, load<f64>(at, 16) + <f64>sum, 16);
}

/**
 * A piece against one to four brackets, as many as a `Width` has bytes, but three for an i32 and four for an i64: a
 * function for each number of brackets, whose keys stay in registers. The next tail.
 *
 * First by keys, four values at a time: how many are below each bracket, and which may be in or at one. Then those: a
 * key between the ends' keys is inside; one that is equal to an end's key is looked at exactly.
 */
function against<Width>(values: usize, n: usize, brackets: usize, tail: usize): usize {
  const none = i32x4.splat(0);
  const low0 = i32x4.splat(lowKey(brackets));
  const top0 = i32x4.splat(highKey(brackets));
  let low1 = none;
  let top1 = none;
  let low2 = none;
  let top2 = none;
  let low3 = none;
  let top3 = none;
  if (sizeof<Width>() > 1) {
    low1 = i32x4.splat(lowKey(brackets + STRIDE));
    top1 = i32x4.splat(highKey(brackets + STRIDE));
  }
  if (sizeof<Width>() > 2) {
    low2 = i32x4.splat(lowKey(brackets + 2 * STRIDE));
    top2 = i32x4.splat(highKey(brackets + 2 * STRIDE));
  }
  if (sizeof<Width>() > 4) {
    low3 = i32x4.splat(lowKey(brackets + 3 * STRIDE));
    top3 = i32x4.splat(highKey(brackets + 3 * STRIDE));
  }
  let below0 = none;
  let below1 = none;
  let below2 = none;
  let below3 = none;
  const marks = BINS;
  let mark = marks;
  const fours = (n >> 2) << 4;
  for (let k: usize = 0; k < fours; k += 16) {
    const at = values + (k << 1);
    const key = keysOf(v128.load(at), v128.load(at, 16));
    let under = i32x4.lt_s(key, low0);
    below0 = i32x4.sub(below0, under);
    // Not under it and not over it: neither mask, where under implies not over.
    let out = v128.or(under, i32x4.gt_s(key, top0));
    if (sizeof<Width>() > 1) {
      under = i32x4.lt_s(key, low1);
      below1 = i32x4.sub(below1, under);
      out = v128.and(out, v128.or(under, i32x4.gt_s(key, top1)));
    }
    if (sizeof<Width>() > 2) {
      under = i32x4.lt_s(key, low2);
      below2 = i32x4.sub(below2, under);
      out = v128.and(out, v128.or(under, i32x4.gt_s(key, top2)));
    }
    if (sizeof<Width>() > 4) {
      under = i32x4.lt_s(key, low3);
      below3 = i32x4.sub(below3, under);
      out = v128.and(out, v128.or(under, i32x4.gt_s(key, top3)));
    }
    const which = <u32>i32x4.bitmask(out) ^ 15;
    store<u32>(mark, <u32>k | which);
    mark += (<usize>(which !== 0)) << 2;
  }
  addLanes(brackets, below0);
  if (sizeof<Width>() > 1) addLanes(brackets + STRIDE, below1);
  if (sizeof<Width>() > 2) addLanes(brackets + 2 * STRIDE, below2);
  if (sizeof<Width>() > 4) addLanes(brackets + 3 * STRIDE, below3);

  const width: usize = sizeof<Width>() > 4 ? 4 : sizeof<Width>() > 2 ? 3 : sizeof<Width>();
  for (let m = marks; m < mark; m += 4) {
    const word = <usize>load<u32>(m);
    const at = values + ((word & ~15) << 1);
    const a = v128.load(at);
    const b = v128.load(at, 16);
    const key = keysOf(a, b);
    let edge = v128.or(i32x4.eq(key, low0), i32x4.eq(key, top0));
    if (sizeof<Width>() > 1) {
      edge = v128.or(edge, v128.or(i32x4.eq(key, low1), i32x4.eq(key, top1)));
    }
    if (sizeof<Width>() > 2) {
      edge = v128.or(edge, v128.or(i32x4.eq(key, low2), i32x4.eq(key, top2)));
    }
    if (sizeof<Width>() > 4) {
      edge = v128.or(edge, v128.or(i32x4.eq(key, low3), i32x4.eq(key, top3)));
    }
    const w = f64x2.extract_lane(a, 0);
    const x = f64x2.extract_lane(a, 1);
    const y = f64x2.extract_lane(b, 0);
    const z = f64x2.extract_lane(b, 1);
    if (v128.any_true(edge)) {
      if ((word & 1) !== 0) tail = meet(w, brackets, width, true, tail);
      if ((word & 2) !== 0) tail = meet(x, brackets, width, true, tail);
      if ((word & 4) !== 0) tail = meet(y, brackets, width, true, tail);
      if ((word & 8) !== 0) tail = meet(z, brackets, width, true, tail);
    } else {
      // A value that is not inside is overwritten by the next one.
      store<f64>(tail, w);
      tail += (word & 1) << 3;
      store<f64>(tail, x);
      tail += (word & 2) << 2;
      store<f64>(tail, y);
      tail += (word & 4) << 1;
      store<f64>(tail, z);
      tail += word & 8;
    }
  }
  for (let at = values + (fours << 1); at < values + (n << 3); at += 8) {
    tail = meet(load<f64>(at), brackets, width, false, tail);
  }
  return tail;
}

function upToFour(values: usize, n: usize, brackets: usize, count: u32, tail: usize): usize {
  if (count > 3) return against<i64>(values, n, brackets, tail);
  if (count === 3) return against<i32>(values, n, brackets, tail);
  if (count === 2) return against<i16>(values, n, brackets, tail);
  return against<i8>(values, n, brackets, tail);
}

/**
 * Counts n values below and at the ends of `count` >= 1 brackets, and stores those inside one from `tail` on, in any
 * order; the values may begin at `tail` or behind it. Answers the next tail. Room for n doubles and one must follow
 * `tail`, and a double the values.
 */
export function absorb(values: usize, n: usize, brackets: usize, count: u32, tail: usize): usize {
  for (let done: usize = 0; done < n; done += PIECE) {
    const piece = min(PIECE, n - done);
    const from = values + (done << 3);
    if (count <= 4) tail = upToFour(from, piece, brackets, count, tail);
    else {
      // The piece is read more than once, and what is stored may lie over it, with one value that is none past it.
      memory.copy(BINS + COPY, from, piece << 3);
      const next = from + (piece << 3);
      const saved = load<f64>(next);
      for (let i: u32 = 0; i < count; i += 4) {
        tail = upToFour(BINS + COPY, piece, brackets + i * STRIDE, count - i, tail);
      }
      store<f64>(next, saved);
    }
  }
  return tail;
}
