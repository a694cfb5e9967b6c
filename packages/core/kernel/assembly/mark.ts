import { MAGIC, MASKS, TOLERANCE } from "./layout";
import { dayOf, entry } from "./time";

/** 16 bytes of 0 or 1 from the 16 low bits. */
function spread(bits: u32): v128 {
  const each = i8x16(1, 2, 4, 8, 16, 32, 64, -128, 1, 2, 4, 8, 16, 32, 64, -128);
  const two = i16x8.splat(<i16>bits);
  const bytes = v128.shuffle<u8>(two, two, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1);
  return i8x16.neg(i8x16.eq(v128.and(bytes, each), each));
}

/** How many of 16 rows from k on lie before n. */
function bitsWithin(k: usize, n: usize): u32 {
  return n - k >= 16 ? 0xffff : (1 << (<u32>(n - k))) - 1;
}

/** Sixteen masks of 64 bits at `masks` as bytes, all bits or none. */
function packed(masks: usize): v128 {
  const a = v128.shuffle<i32>(v128.load(masks), v128.load(masks, 16), 0, 2, 4, 6);
  const b = v128.shuffle<i32>(v128.load(masks, 32), v128.load(masks, 48), 0, 2, 4, 6);
  const c = v128.shuffle<i32>(v128.load(masks, 64), v128.load(masks, 80), 0, 2, 4, 6);
  const d = v128.shuffle<i32>(v128.load(masks, 96), v128.load(masks, 112), 0, 2, 4, 6);
  return i8x16.narrow_i16x8_s(i16x8.narrow_i32x4_s(a, b), i16x8.narrow_i32x4_s(c, d));
}

/**
 * Which of 16 finishes reach their moment: f >= s, or the next work after f does; bytes of 1 or 0. `days` 0: every day
 * works. `gap`: no work begins later than this after a moment up to `end`. Only those in `bits` need an answer, and only
 * they are looked up.
 */
function reaching(days: usize, gap: f64, end: f64, f: usize, s: usize, bits: u32): v128 {
  const masks = MASKS;
  const gaps = f64x2.splat(gap);
  const ends = f64x2.splat(end);
  for (let p: usize = 0; p < 128; p += 16) {
    const finish = v128.load(f + p);
    const moment = f64x2.sub(v128.load(s + p), f64x2.splat(TOLERANCE));
    let reached = f64x2.ge(finish, moment);
    if (days !== 0) {
      const far = f64x2.lt(finish, f64x2.pmin(ends, f64x2.sub(moment, gaps)));
      const open = i64x2.bitmask(v128.or(reached, far)) ^ 3;
      if (((bits >> (<u32>p >> 3)) & open) !== 0) {
        reached = v128.or(reached, pausing(days, finish, moment));
      }
    }
    v128.store(masks + p, reached);
  }
  return i8x16.neg(packed(masks));
}

/** Of two finishes, those on a day off whose next work begins at the moment or later. */
function pausing(days: usize, finish: v128, moment: v128): v128 {
  const day = f64x2.pmax(f64x2.splat(0), dayOf(finish));
  const index = f64x2.add(day, f64x2.splat(MAGIC));
  const first = v128.shuffle<f64>(entry(days, index, 0), entry(days, index, 1), 1, 3);
  return v128.and(f64x2.ge(first, moment), f64x2.ne(first, day));
}

/** moves = 1 where the finish, or the next work after it, is the plan's finish; else 0. */
export function markFinish(
  days: usize,
  gap: f64,
  end: f64,
  planFinish: usize,
  finish: usize,
  moves: usize,
  n: usize,
): void {
  for (let k: usize = 0; k < n; k += 16) {
    const bits = bitsWithin(k, n);
    const reached = reaching(days, gap, end, finish, planFinish, bits);
    if (bits === 0xffff) v128.store(moves + k, reached);
    else v128.store(moves + k, v128.bitselect(reached, v128.load(moves + k), i8x16.neg(spread(bits))));
    finish += 128;
    planFinish += 128;
  }
}

/** moves_i = 1 where j moves and starts at the finish of i or at the next work after it. */
export function markSimple(
  days: usize,
  gap: f64,
  end: f64,
  movesI: usize,
  movesJ: usize,
  finishI: usize,
  startJ: usize,
  n: usize,
): void {
  for (let k: usize = 0; k < n; k += 16) {
    const marked = v128.load(movesI + k);
    const open = v128.andnot(v128.load(movesJ + k), marked);
    const bits = <u32>i8x16.bitmask(i8x16.neg(open)) & bitsWithin(k, n);
    if (bits !== 0) {
      let reached = v128.and(reaching(days, gap, end, finishI, startJ, bits), v128.load(movesJ + k));
      if (k + 16 > n) reached = v128.and(reached, spread(bits));
      v128.store(movesI + k, v128.or(marked, reached));
    }
    finishI += 128;
    startJ += 128;
  }
}

/** Whether any of n bytes is set. */
export function anySet(row: usize, n: usize): i32 {
  let any = i64x2.splat(0);
  let k: usize = 0;
  for (; k + 16 <= n; k += 16) any = v128.or(any, v128.load(row + k));
  const rest = v128.and(v128.load(row + k), spread(bitsWithin(k, n)));
  return <i32>v128.any_true(v128.or(any, rest));
}

/** occurs = 1 where lo <= u < hi; else 0. */
export function occur(u: usize, lo: f64, hi: f64, occurs: usize, n: usize): void {
  const masks = MASKS;
  const from = f64x2.splat(lo);
  const to = f64x2.splat(hi);
  for (let k: usize = 0; k < n; k += 16) {
    for (let p: usize = 0; p < 128; p += 16) {
      const x = v128.load(u + p);
      v128.store(masks + p, v128.and(f64x2.ge(x, from), f64x2.lt(x, to)));
    }
    const bits = bitsWithin(k, n);
    const row = i8x16.neg(packed(masks));
    if (bits === 0xffff) v128.store(occurs + k, row);
    else v128.store(occurs + k, v128.bitselect(row, v128.load(occurs + k), i8x16.neg(spread(bits))));
    u += 128;
  }
}
