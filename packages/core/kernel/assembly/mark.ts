import { TOLERANCE } from "./layout";
import { dayOf, read } from "./time";

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

/**
 * Which of up to 16 finishes reach their moment: f >= s, or the next work after f does; one bit each. `nth` 0:
 * every day works. `gap`: no two days of work lie further apart; `end`: past it no work follows.
 */
function reaching(cum: usize, nth: usize, gap: f64, end: f64, f: usize, s: usize, bits: u32): u32 {
  let reached: u32 = 0;
  for (let p: u32 = 0; p < 16 && bits >> p !== 0; p += 2) {
    const finish = v128.load(f);
    const moment = f64x2.sub(v128.load(s), f64x2.splat(TOLERANCE));
    let lanes = i64x2.bitmask(f64x2.ge(finish, moment));
    if (nth !== 0 && lanes !== 3) {
      const far = f64x2.lt(finish, f64x2.pmin(f64x2.splat(end), f64x2.sub(moment, f64x2.splat(gap))));
      // Of what lies behind the row nothing counts, but its bits may be anything: nothing looks it up.
      const open = (bits >> p) & 3 & ~lanes & ~i64x2.bitmask(far);
      if (open !== 0) lanes |= pausing(cum, nth, finish, moment);
    }
    reached |= lanes << p;
    f += 16;
    s += 16;
  }
  return reached & bits;
}

/** Of two finishes, those on a day off whose next work begins at the moment or later; one bit each. */
function pausing(cum: usize, nth: usize, finish: v128, moment: v128): u32 {
  const day = f64x2.pmax(f64x2.splat(0), dayOf(finish));
  const before = read(cum, day);
  const works = f64x2.gt(read(cum + 4, day), before);
  return i64x2.bitmask(v128.andnot(f64x2.ge(read(nth, before), moment), works));
}

/** moves = 1 where the finish, or the next work after it, is the plan's finish; else 0. */
export function markFinish(
  cum: usize,
  nth: usize,
  gap: f64,
  end: f64,
  planFinish: usize,
  finish: usize,
  moves: usize,
  n: usize,
): void {
  for (let k: usize = 0; k < n; k += 16) {
    const bits = bitsWithin(k, n);
    const reached = spread(reaching(cum, nth, gap, end, finish, planFinish, bits));
    if (bits === 0xffff) v128.store(moves + k, reached);
    else v128.store(moves + k, v128.or(reached, v128.andnot(v128.load(moves + k), i8x16.neg(spread(bits)))));
    finish += 128;
    planFinish += 128;
  }
}

/** moves_i = 1 where j moves and starts at the finish of i or at the next work after it. */
export function markSimple(
  cum: usize,
  nth: usize,
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
      const reached = reaching(cum, nth, gap, end, finishI, startJ, bits);
      v128.store(movesI + k, v128.or(marked, spread(reached)));
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
  const from = f64x2.splat(lo);
  const to = f64x2.splat(hi);
  for (let k: usize = 0; k < n; k += 16) {
    let bits: u32 = 0;
    for (let p: u32 = 0; p < 16; p += 2) {
      const x = v128.load(u);
      bits |= i64x2.bitmask(v128.and(f64x2.ge(x, from), f64x2.lt(x, to))) << p;
      u += 16;
    }
    const within = bitsWithin(k, n);
    const row = spread(bits & within);
    if (within === 0xffff) v128.store(occurs + k, row);
    else v128.store(occurs + k, v128.or(row, v128.andnot(v128.load(occurs + k), i8x16.neg(spread(within)))));
  }
}
