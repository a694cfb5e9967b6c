import { TOLERANCE } from "./layout";

// The steps of a program (program.ts) whose sums go to the block's answers.

/** Stands for a row that is not there. */
const NONE: u32 = 0xffffffff;

/** Sums stand in four lanes, iteration k in lane k mod 4, and are added up in pairs at the end. */
function total(a: v128, b: v128): f64 {
  return (
    f64x2.extract_lane(a, 0) +
    f64x2.extract_lane(a, 1) +
    (f64x2.extract_lane(b, 0) + f64x2.extract_lane(b, 1))
  );
}

/** The second and fourth answer of `sumMasked`: sum of the durations, and how many have no length. */
export function sumDuration(duration: usize, out: usize, n: usize): void {
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
export function sumMoving(duration: usize, moves: usize, base: f64, out: usize, n: usize): void {
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
export function sumImpact(p: usize, rows: usize, told: usize, n: usize): void {
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
