import { ANSWERS, BEGINS, BINS, CURSORS, LISTS, MAGIC, RANKS } from "./layout";

const binCount: u32 = 8192;

/** Doubles as integers in the same order, -0 before 0; its own inverse. */
function ordered(bits: i64): i64 {
  return bits ^ <i64>(<u64>(bits >> 63) >> 1);
}

/** Shell's sort with Knuth's steps, of doubles in the order above. */
function sort(from: usize, to: usize): void {
  for (let at = from; at < to; at += 8) store<i64>(at, ordered(load<i64>(at)));
  let step: usize = 8;
  while (step * 9 < to - from) step = step * 3 + 8;
  for (; step >= 8; step = ((step >> 3) / 3) << 3) {
    for (let at = from + step; at < to; at += 8) {
      const key = load<i64>(at);
      let hole = at;
      while (hole >= from + step && load<i64>(hole - step) > key) {
        store<i64>(hole, load<i64>(hole - step));
        hole -= step;
      }
      store<i64>(hole, key);
    }
  }
  for (let at = from; at < to; at += 8) store<i64>(at, ordered(load<i64>(at)));
}

function gather(cursors: usize, list: u32, value: f64): void {
  const cursor = cursors + ((<usize>list) << 2);
  const at = load<u32>(cursor);
  store<f64>(at, value);
  store<u32>(cursor, at + 8);
}

/** The bins of two values, each at the beginning of 64 bits. */
function binsOf(two: v128, least: f64, scale: f64): v128 {
  const place = f64x2.mul(f64x2.sub(two, f64x2.splat(least)), f64x2.splat(scale));
  return v128.and(f64x2.add(place, f64x2.splat(MAGIC)), i64x2.splat(binCount - 1));
}

/** Gathers what falls into the bins of up to four lists, of which few values do: those are looked for by fours. */
function gatherFew(values: usize, end: usize, lists: u32, least: f64, scale: f64): usize {
  const a = v128.load64_splat(ANSWERS);
  const b = lists > 1 ? v128.load64_splat(ANSWERS, 8) : a;
  const c = lists > 2 ? v128.load64_splat(ANSWERS, 16) : a;
  const d = lists > 3 ? v128.load64_splat(ANSWERS, 24) : a;
  const magic = f64x2.splat(MAGIC);
  const leasts = f64x2.splat(least);
  const scales = f64x2.splat(scale);
  const lists0 = LISTS;
  const cursors = CURSORS;
  let at = values;
  for (; at + 32 <= end; at += 32) {
    const x = f64x2.add(f64x2.mul(f64x2.sub(v128.load(at), leasts), scales), magic);
    const y = f64x2.add(f64x2.mul(f64x2.sub(v128.load(at, 16), leasts), scales), magic);
    const inX = v128.or(v128.or(f64x2.eq(x, a), f64x2.eq(x, b)), v128.or(f64x2.eq(x, c), f64x2.eq(x, d)));
    const inY = v128.or(v128.or(f64x2.eq(y, a), f64x2.eq(y, b)), v128.or(f64x2.eq(y, c), f64x2.eq(y, d)));
    if (v128.any_true(v128.or(inX, inY))) {
      for (let k: usize = 0; k < 32; k += 8) {
        const bin = <usize>i32x4.extract_lane(binsOf(v128.load64_splat(at + k), least, scale), 0);
        const list = <u32>load<u8>(lists0 + bin);
        if (list !== 0) gather(cursors, list, load<f64>(at + k));
      }
    }
  }
  return at;
}

function count(bins: usize, bin: u32): void {
  const at = bins + ((<usize>bin) << 2);
  store<u32>(at, load<u32>(at) + 1);
}

/**
 * Opens a list for each bin that holds one of `count` ascending ranks (at RANKS), and writes in place of the rank
 * where its answer will stand once the list is sorted. How many lists; 0 where they would hold more than `room` values.
 */
function openLists(count: u32, scratch: usize, room: u32): u32 {
  let bin: usize = 0;
  let before: u32 = 0;
  let list: u32 = 0;
  let gathered: u32 = 0;
  for (let r: usize = 0; r < count; r++) {
    const rank = load<u32>(RANKS + (r << 2));
    let held = load<u32>(BINS + (bin << 2));
    while (before + held < rank) {
      before += held;
      bin++;
      held = load<u32>(BINS + (bin << 2));
    }
    if (load<u8>(LISTS + bin) === 0) {
      list++;
      store<u8>(LISTS + bin, <u8>list);
      if (list <= 4) store<f64>(ANSWERS + ((<usize>list - 1) << 3), MAGIC + <f64>bin);
      const begin = scratch + ((<usize>gathered) << 3);
      store<u32>(CURSORS + ((<usize>list) << 2), <u32>begin);
      store<u32>(BEGINS + ((<usize>list) << 2), <u32>begin);
      gathered += held;
      if (gathered > room) return 0;
    }
    const begin = load<u32>(BEGINS + ((<usize>load<u8>(LISTS + bin)) << 2));
    store<u32>(RANKS + (r << 2), begin + ((rank - before - 1) << 3));
  }
  return list;
}

/**
 * Answers the values at `wanted` ascending, different ranks (at RANKS) among n >= 4 values. One pass finds the ends,
 * one counts into bins, one gathers the bins that hold a wanted rank; those are sorted.
 *
 * Returns 0, and answers nothing, where that would not pay: ends that are equal or not finite, or more than `room`
 * values in the wanted bins.
 */
export function selectRanks(values: usize, n: usize, wanted: u32, scratch: usize, room: u32): i32 {
  const end = values + (n << 3);
  // The last two are looked at first: a loop over pairs leaves one of them out when n is odd.
  let least = v128.load(end - 16);
  let most = least;
  let less = least;
  let more = least;
  let at = values;
  for (; at + 32 <= end; at += 32) {
    const x = v128.load(at);
    const y = v128.load(at, 16);
    least = f64x2.pmin(least, x);
    less = f64x2.pmin(less, y);
    most = f64x2.pmax(most, x);
    more = f64x2.pmax(more, y);
  }
  if (at + 16 <= end) {
    least = f64x2.pmin(least, v128.load(at));
    most = f64x2.pmax(most, v128.load(at));
  }
  least = f64x2.pmin(least, less);
  most = f64x2.pmax(most, more);
  const min = Math.min(f64x2.extract_lane(least, 0), f64x2.extract_lane(least, 1));
  const max = Math.max(f64x2.extract_lane(most, 0), f64x2.extract_lane(most, 1));
  const used: u32 = n < 65536 ? 2048 : binCount;
  const scale = <f64>(used - 1) / (max - min);
  if (!(scale > 0 && scale < Infinity)) return 0;

  const bins0 = BINS;
  const lists0 = LISTS;
  const cursors = CURSORS;
  memory.fill(bins0, 0, used << 2);
  for (at = values; at + 16 <= end; at += 16) {
    const bins = binsOf(v128.load(at), min, scale);
    count(bins0, i32x4.extract_lane(bins, 0));
    count(bins0, i32x4.extract_lane(bins, 2));
  }
  if (at < end) count(bins0, i32x4.extract_lane(binsOf(v128.load64_splat(at), min, scale), 0));

  memory.fill(lists0, 0, used);
  const lists = openLists(wanted, scratch, room);
  if (lists === 0) return 0;
  at = lists <= 4 ? gatherFew(values, end, lists, min, scale) : values;
  for (; at + 16 <= end; at += 16) {
    const bins = binsOf(v128.load(at), min, scale);
    const one = <u32>load<u8>(lists0 + <usize>i32x4.extract_lane(bins, 0));
    const two = <u32>load<u8>(lists0 + <usize>i32x4.extract_lane(bins, 2));
    if ((one | two) !== 0) {
      if (one !== 0) gather(cursors, one, load<f64>(at));
      if (two !== 0) gather(cursors, two, load<f64>(at, 8));
    }
  }
  if (at < end) {
    const bins = binsOf(v128.load64_splat(at), min, scale);
    const one = <u32>load<u8>(lists0 + <usize>i32x4.extract_lane(bins, 0));
    if (one !== 0) gather(cursors, one, load<f64>(at));
  }

  for (let l: usize = 1; l <= lists; l++) {
    sort(load<u32>(BEGINS + (l << 2)), load<u32>(CURSORS + (l << 2)));
  }
  for (let r: usize = 0; r < wanted; r++) {
    store<f64>(ANSWERS + (r << 3), load<f64>(load<u32>(RANKS + (r << 2))));
  }
  return 1;
}

/**
 * The values at `wanted` ascending, different ranks (at `ranks`, 32 bits each) of a row, at `out`. Where `selectRanks` would
 * answer nothing, the first is NaN.
 */
export function rankRow(
  row: usize,
  n: usize,
  ranks: usize,
  wanted: u32,
  scratch: usize,
  room: u32,
  out: usize,
): void {
  memory.copy(RANKS, ranks, wanted << 2);
  if (selectRanks(row, n, wanted, scratch, room)) memory.copy(out, ANSWERS, wanted << 3);
  else store<f64>(out, NaN);
}
