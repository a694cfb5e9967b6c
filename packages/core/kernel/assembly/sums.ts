import { ANSWERS, TOLERANCE } from "./layout";

/** Bytes 0 and 1 of four, as masks of two doubles: all bits where the byte is set. */
function low(bytes: u32): v128 {
  const wide = v128.shuffle<u8>(
    i32x4.splat(bytes),
    i32x4.splat(0),
    0,
    0,
    0,
    0,
    0,
    0,
    0,
    0,
    1,
    1,
    1,
    1,
    1,
    1,
    1,
    1,
  );
  return i8x16.neg(wide);
}

/** Bytes 2 and 3. */
function high(bytes: u32): v128 {
  return low(bytes >> 16);
}

/** The first four bytes of a row, those past its end 0. */
function four(at: usize, left: usize): u32 {
  const bytes = load<u32>(at);
  return left >= 4 ? bytes : bytes & ((1 << ((<u32>left) << 3)) - 1);
}

/** Four bytes 1 where the row has not ended. */
function within(left: usize): u32 {
  return left >= 4 ? 0x01010101 : 0x01010101 & ((1 << ((<u32>left) << 3)) - 1);
}

/** Sums stand in four lanes, iteration k in lane k mod 4, and are added up in pairs at the end. */
function total(a: v128, b: v128): f64 {
  return (
    f64x2.extract_lane(a, 0) +
    f64x2.extract_lane(a, 1) +
    (f64x2.extract_lane(b, 0) + f64x2.extract_lane(b, 1))
  );
}

/** duration += scale * draws where it occurs. */
export function addImpact(duration: usize, occurs: usize, draws: usize, scale: f64, n: usize): void {
  const scales = f64x2.splat(scale);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const where = four(occurs, left);
    const x = v128.load(duration);
    const y = v128.load(duration, 16);
    const a = f64x2.add(x, f64x2.mul(scales, v128.load(draws)));
    const b = f64x2.add(y, f64x2.mul(scales, v128.load(draws, 16)));
    v128.store(duration, v128.bitselect(a, x, low(where)));
    v128.store(duration, v128.bitselect(b, y, high(where)), 16);
    duration += 32;
    draws += 32;
    occurs += 4;
  }
}

/** duration *= 1 + scale * (draws - 1) where it occurs. */
export function multiplyImpact(duration: usize, occurs: usize, draws: usize, scale: f64, n: usize): void {
  const scales = f64x2.splat(scale);
  const one = f64x2.splat(1);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const where = four(occurs, left);
    const x = v128.load(duration);
    const y = v128.load(duration, 16);
    const a = f64x2.add(one, f64x2.mul(scales, f64x2.sub(v128.load(draws), one)));
    const b = f64x2.add(one, f64x2.mul(scales, f64x2.sub(v128.load(draws, 16), one)));
    v128.store(duration, v128.bitselect(f64x2.mul(x, a), x, low(where)));
    v128.store(duration, v128.bitselect(f64x2.mul(y, b), y, high(where)), 16);
    duration += 32;
    draws += 32;
    occurs += 4;
  }
}

/** total += part; the sum of part. */
export function addCost(into: usize, part: usize, n: usize): f64 {
  let s = f64x2.splat(0);
  let t = f64x2.splat(0);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const where = within(left);
    const a = v128.and(v128.load(part), low(where));
    const b = v128.and(v128.load(part, 16), high(where));
    const x = v128.load(into);
    const y = v128.load(into, 16);
    v128.store(into, v128.bitselect(f64x2.add(x, a), x, low(where)));
    v128.store(into, v128.bitselect(f64x2.add(y, b), y, high(where)), 16);
    s = f64x2.add(s, a);
    t = f64x2.add(t, b);
    into += 32;
    part += 32;
  }
  return total(s, t);
}

/** total += scale * draws where it occurs; the sum of what was added. */
export function addCostWhere(into: usize, occurs: usize, draws: usize, scale: f64, n: usize): f64 {
  const scales = f64x2.splat(scale);
  let s = f64x2.splat(0);
  let t = f64x2.splat(0);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const where = four(occurs, left);
    const a = v128.and(f64x2.mul(scales, v128.load(draws)), low(where));
    const b = v128.and(f64x2.mul(scales, v128.load(draws, 16)), high(where));
    const x = v128.load(into);
    const y = v128.load(into, 16);
    v128.store(into, v128.bitselect(f64x2.add(x, a), x, low(where)));
    v128.store(into, v128.bitselect(f64x2.add(y, b), y, high(where)), 16);
    s = f64x2.add(s, a);
    t = f64x2.add(t, b);
    into += 32;
    draws += 32;
    occurs += 4;
  }
  return total(s, t);
}

/** total += once + (perDay + people) * duration; the sum of what was added. */
export function addTaskCost(
  into: usize,
  once: usize,
  perDay: usize,
  people: f64,
  duration: usize,
  n: usize,
): f64 {
  const more = f64x2.splat(people);
  let s = f64x2.splat(0);
  let t = f64x2.splat(0);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const where = within(left);
    let a = f64x2.mul(f64x2.add(v128.load(perDay), more), v128.load(duration));
    let b = f64x2.mul(f64x2.add(v128.load(perDay, 16), more), v128.load(duration, 16));
    a = v128.and(f64x2.add(v128.load(once), a), low(where));
    b = v128.and(f64x2.add(v128.load(once, 16), b), high(where));
    const x = v128.load(into);
    const y = v128.load(into, 16);
    v128.store(into, v128.bitselect(f64x2.add(x, a), x, low(where)));
    v128.store(into, v128.bitselect(f64x2.add(y, b), y, high(where)), 16);
    s = f64x2.add(s, a);
    t = f64x2.add(t, b);
    into += 32;
    once += 32;
    perDay += 32;
    duration += 32;
  }
  return total(s, t);
}

/** total += once + rate * duration; the sum of what was added. */
export function addDailyCost(into: usize, once: usize, rate: f64, duration: usize, n: usize): f64 {
  const rates = f64x2.splat(rate);
  let s = f64x2.splat(0);
  let t = f64x2.splat(0);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    let a = f64x2.add(v128.load(once), f64x2.mul(rates, v128.load(duration)));
    let b = f64x2.add(v128.load(once, 16), f64x2.mul(rates, v128.load(duration, 16)));
    const x = v128.load(into);
    const y = v128.load(into, 16);
    if (left >= 4) {
      v128.store(into, f64x2.add(x, a));
      v128.store(into, f64x2.add(y, b), 16);
    } else {
      const where = within(left);
      a = v128.and(a, low(where));
      b = v128.and(b, high(where));
      v128.store(into, v128.bitselect(f64x2.add(x, a), x, low(where)));
      v128.store(into, v128.bitselect(f64x2.add(y, b), y, high(where)), 16);
    }
    s = f64x2.add(s, a);
    t = f64x2.add(t, b);
    into += 32;
    once += 32;
    duration += 32;
  }
  return total(s, t);
}

/** part += rate * duration. */
export function addDaily(part: usize, duration: usize, rate: f64, n: usize): void {
  const rates = f64x2.splat(rate);
  const end = part + (n << 3);
  for (; part < end; part += 16) {
    const value = f64x2.add(v128.load(part), f64x2.mul(rates, v128.load(duration)));
    if (part + 8 < end) v128.store(part, value);
    else v128.store64_lane(part, value, 0);
    duration += 16;
  }
}

/**
 * Answers: sum of duration - base where it moves, sum of duration, how many move, how many have no length.
 */
export function sumMasked(duration: usize, moves: usize, base: f64, n: usize): void {
  const bases = f64x2.splat(base);
  const least = f64x2.splat(TOLERANCE);
  let s = f64x2.splat(0);
  let t = f64x2.splat(0);
  let u = f64x2.splat(0);
  let v = f64x2.splat(0);
  let moving = 0;
  let points = i64x2.splat(0);
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const rows = within(left);
    const where = four(moves, left);
    const x = v128.load(duration);
    const y = v128.load(duration, 16);
    s = f64x2.add(s, v128.and(f64x2.sub(x, bases), low(where)));
    t = f64x2.add(t, v128.and(f64x2.sub(y, bases), high(where)));
    u = f64x2.add(u, v128.and(x, low(rows)));
    v = f64x2.add(v, v128.and(y, high(rows)));
    points = i64x2.sub(points, v128.and(f64x2.le(x, least), low(rows)));
    points = i64x2.sub(points, v128.and(f64x2.le(y, least), high(rows)));
    moving += popcnt(where);
    duration += 32;
    moves += 4;
  }
  store<f64>(ANSWERS, total(s, t));
  store<f64>(ANSWERS, total(u, v), 8);
  store<f64>(ANSWERS, <f64>moving, 16);
  store<f64>(ANSWERS, <f64>(i64x2.extract_lane(points, 0) + i64x2.extract_lane(points, 1)), 24);
}

/** Answers: the sums of x, y, x * x, y * y and x * y. */
export function sumProducts(x: usize, y: usize, n: usize): void {
  sumProductsInto(x, y, n, ANSWERS);
}

/** The same, into five doubles. */
export function sumProductsInto(x: usize, y: usize, n: usize, out: usize): void {
  let sx = f64x2.splat(0);
  let tx = sx;
  let sy = sx;
  let ty = sx;
  let sxx = sx;
  let txx = sx;
  let syy = sx;
  let tyy = sx;
  let sxy = sx;
  let txy = sx;
  for (let left: usize = n; <isize>left > 0; left -= 4) {
    const rows = within(left);
    const a = v128.and(v128.load(x), low(rows));
    const b = v128.and(v128.load(x, 16), high(rows));
    const c = v128.and(v128.load(y), low(rows));
    const d = v128.and(v128.load(y, 16), high(rows));
    sx = f64x2.add(sx, a);
    tx = f64x2.add(tx, b);
    sy = f64x2.add(sy, c);
    ty = f64x2.add(ty, d);
    sxx = f64x2.add(sxx, f64x2.mul(a, a));
    txx = f64x2.add(txx, f64x2.mul(b, b));
    syy = f64x2.add(syy, f64x2.mul(c, c));
    tyy = f64x2.add(tyy, f64x2.mul(d, d));
    sxy = f64x2.add(sxy, f64x2.mul(a, c));
    txy = f64x2.add(txy, f64x2.mul(b, d));
    x += 32;
    y += 32;
  }
  store<f64>(out, total(sx, tx));
  store<f64>(out, total(sy, ty), 8);
  store<f64>(out, total(sxx, txx), 16);
  store<f64>(out, total(syy, tyy), 24);
  store<f64>(out, total(sxy, txy), 32);
}
