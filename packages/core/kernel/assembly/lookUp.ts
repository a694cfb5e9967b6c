import { MAGIC } from "./layout";

/** The standard quantile of a uniform in a tail, below 1/32 or from 31/32 on. Which of the two is no branch. */
export function tail(table: usize, u: f64): f64 {
  const upper = u >= 0.5;
  const mask = -(<i64>upper);
  const near = (reinterpret<i64>(1.0 - u) & mask) | (reinterpret<i64>(u) & ~mask);
  const v = reinterpret<f64>(near) * 68719476736.0; // 2^36
  let entry = table + (3472 & <usize>mask); // entry 434: the upper tail
  let within = v * 0.0625;
  if (v >= 16.0) {
    const octave = 27 - clz<u32>(<u32>v);
    // Divided by a power of two: exact, as is the product with its reciprocal.
    const t = v * reinterpret<f64>((<u64>(1023 - octave)) << 52);
    const cell = <i32>t;
    entry += (<usize>(16 * octave + cell - 15)) << 3;
    within = t - <f64>cell;
  }
  const from = load<f64>(entry);
  return from + within * (load<f64>(entry, 8) - from);
}

/** Draws from a quantile table: out = shift + scale * quantile(u), cut at zero when `cut`; how many were. */
export function lookUp(table: usize, shift: f64, scale: f64, u: usize, out: usize, n: usize, cut: i32): i32 {
  const body = table + 6688; // entry 836: body cell 0
  const shifts = f64x2.splat(shift);
  const scales = f64x2.splat(scale);
  const zero = f64x2.splat(cut ? 0 : -Infinity);
  let below = 0;
  const end = u + (n << 3);
  for (; u < end; u += 16) {
    const p = v128.load(u);
    const t = f64x2.mul(p, f64x2.splat(1024));
    const whole = f64x2.floor(t);
    const index = f64x2.add(whole, f64x2.splat(MAGIC));
    // Cells of the tails' strata lie in other parts of the table: read, then replaced below.
    const one = v128.load(body + ((<usize>(i32x4.extract_lane(index, 0) & 1023)) << 3));
    const two = v128.load(body + ((<usize>(i32x4.extract_lane(index, 2) & 1023)) << 3));
    const from = v128.shuffle<f64>(one, two, 0, 2);
    const step = f64x2.sub(v128.shuffle<f64>(one, two, 1, 3), from);
    let value = f64x2.add(from, f64x2.mul(f64x2.sub(t, whole), step));
    const inside = i64x2.bitmask(
      v128.and(f64x2.ge(p, f64x2.splat(0.03125)), f64x2.lt(p, f64x2.splat(0.96875))),
    );
    if (inside !== 3) {
      if (!(inside & 1)) value = f64x2.replace_lane(value, 0, tail(table, f64x2.extract_lane(p, 0)));
      // The lane past an odd end may hold anything.
      if (!(inside & 2) && u + 8 < end) {
        value = f64x2.replace_lane(value, 1, tail(table, f64x2.extract_lane(p, 1)));
      }
    }
    value = f64x2.add(shifts, f64x2.mul(scales, value));
    const negative = f64x2.lt(value, zero);
    value = v128.andnot(value, negative);
    if (u + 8 < end) {
      v128.store(out, value);
      below += popcnt(i64x2.bitmask(negative));
    } else {
      v128.store64_lane(out, value, 0);
      below += i64x2.bitmask(negative) & 1;
    }
    out += 16;
  }
  return below;
}

/** Draws from outcomes: the first value whose chance up to it reaches u; cut at zero when `cut`; how many were. */
export function lookUpOutcomes(
  values: usize,
  upTo: usize,
  count: usize,
  u: usize,
  out: usize,
  n: usize,
  cut: i32,
): i32 {
  let below = 0;
  const end = u + (n << 3);
  if (count <= 16) {
    // How many of the others u lies above: as they rise, that is the index. The last is never passed.
    const table = upTo;
    const last = upTo + ((<usize>(count - 1)) << 3);
    const zero = f64x2.splat(cut ? 0 : -Infinity);
    for (; u < end; u += 16) {
      const p = v128.load(u);
      let at = i64x2.splat(0);
      for (let k = table; k < last; k += 8) at = i64x2.sub(at, f64x2.gt(p, v128.load64_splat(k)));
      const one = v128.load64_zero(values + ((<usize>i64x2.extract_lane(at, 0)) << 3));
      let value = v128.load64_lane(values + ((<usize>i64x2.extract_lane(at, 1)) << 3), one, 1);
      const negative = f64x2.lt(value, zero);
      value = v128.andnot(value, negative);
      if (u + 8 < end) {
        v128.store(out, value);
        below += popcnt(i64x2.bitmask(negative));
      } else {
        v128.store64_lane(out, value, 0);
        below += i64x2.bitmask(negative) & 1;
      }
      out += 16;
    }
    return below;
  }
  for (; u < end; u += 8) {
    const p = load<f64>(u);
    let at: usize = 0;
    for (let left = count; left > 1; ) {
      const half = left >> 1;
      at += half * <usize>(p > load<f64>(upTo + ((at + half - 1) << 3)));
      left -= half;
    }
    let value = load<f64>(values + (at << 3));
    if (cut && value < 0) {
      value = 0;
      below++;
    }
    store<f64>(out, value);
    out += 8;
  }
  return below;
}
