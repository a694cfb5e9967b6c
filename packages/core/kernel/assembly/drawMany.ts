import { drawLatin } from "./draws";
import { STRATA4, WORDS4 } from "./layout";
import { tail } from "./lookUp";

// A record of 48 bytes says what to draw: address of the words of ten blocks, of the table, of the row, whether it is
// cut at zero (four of 32 bits), shift and scale (doubles), how many values were cut so far, and where in the answers of a
// program that is told instead (32 bits each).
const size: usize = 48;

/** Draws a block of each record; `which` of the ten blocks whose words are there. */
export function drawMany(records: usize, count: u32, which: u32, n: usize): void {
  drawRecords(records, count, <usize>(which << 4), n, 0, 0);
}

/**
 * The same; `seed` bytes behind the beginning of the words, into rows that begin `rows` bytes behind what the records say.
 * How many were cut goes where the records say in `told`, or into the records where that is 0.
 */
export function drawRecords(
  records: usize,
  count: u32,
  seed: usize,
  n: usize,
  rows: usize,
  told: usize,
): void {
  const end = records + <usize>count * size;
  for (; records + 4 * size <= end; records += 4 * size) drawFour(records, seed, n, rows, told);
  for (; records < end; records += size) {
    const words = <usize>load<u32>(records) + seed;
    const below = drawLatin(
      load<u32>(words),
      load<u32>(words, 4),
      load<u32>(words, 8),
      load<u32>(words, 12),
      load<u32>(records, 4),
      load<f64>(records, 16),
      load<f64>(records, 24),
      rows + load<u32>(records, 8),
      n,
      load<u32>(records, 12),
    );
    if (below > 0) tell(records, told, below);
  }
}

function tell(record: usize, told: usize, below: u32): void {
  const at = told === 0 ? record + 32 : told + load<u32>(record, 36);
  store<u32>(at, load<u32>(at) + below);
}

/**
 * Four records at once: their generators run in the four lanes of a vector, in step. The same draws as one by one, as
 * nothing is shared.
 */
function drawFour(r: usize, seed: usize, n: usize, rows: usize, told: usize): void {
  const w0 = v128.load(load<u32>(r) + seed);
  const w1 = v128.load(load<u32>(r, 48) + seed);
  const w2 = v128.load(load<u32>(r, 96) + seed);
  const w3 = v128.load(load<u32>(r, 144) + seed);
  const x0 = v128.shuffle<i32>(w0, w1, 0, 4, 1, 5);
  const x1 = v128.shuffle<i32>(w2, w3, 0, 4, 1, 5);
  const x2 = v128.shuffle<i32>(w0, w1, 2, 6, 3, 7);
  const x3 = v128.shuffle<i32>(w2, w3, 2, 6, 3, 7);
  let a = v128.shuffle<i64>(x0, x1, 0, 2);
  let b = v128.shuffle<i64>(x0, x1, 1, 3);
  let c = v128.shuffle<i64>(x2, x3, 0, 2);
  let t = v128.shuffle<i64>(x2, x3, 1, 3);
  const one = i32x4.splat(1);
  for (let k = 0; k < 15; k++) {
    const word = i32x4.add(i32x4.add(a, b), t);
    t = i32x4.add(t, one);
    a = v128.xor(b, i32x4.shr_u(b, 9));
    b = i32x4.add(c, i32x4.shl(c, 3));
    c = i32x4.add(v128.or(i32x4.shl(c, 21), i32x4.shr_u(c, 11)), word);
  }

  // Strata in random order, as in `shuffle` of draws.ts; here the row's number counts in bytes.
  const strata4 = STRATA4;
  const words4 = WORDS4;
  const base = i32x4.splat(<i32>strata4);
  let upTo = one;
  let i = strata4;
  let seen: u64 = 0;
  // Meanwhile the four tables are looked over, from end to end, so that they are near when they are read here and there:
  // 57 bytes a step miss no line of 64 of the 14,632.
  for (let lane: usize = 0; lane < 192; lane += 48) {
    let touch = <usize>load<u32>(r + lane, 4);
    const last = i + 512;
    for (; i < last; i += 2) {
      seen |= load<u64>(touch);
      touch += 57;
      const word = i32x4.add(i32x4.add(a, b), t);
      t = i32x4.add(t, one);
      a = v128.xor(b, i32x4.shr_u(b, 9));
      b = i32x4.add(c, i32x4.shl(c, 3));
      c = i32x4.add(v128.or(i32x4.shl(c, 21), i32x4.shr_u(c, 11)), word);
      const low = i64x2.extmul_low_i32x4_u(word, upTo);
      const high = i64x2.extmul_high_i32x4_u(word, upTo);
      upTo = i32x4.add(upTo, one);
      const others = i32x4.add(base, i32x4.shl(v128.shuffle<i32>(low, high, 1, 3, 5, 7), 1));
      const k = <u16>((i - strata4) >> 1);
      const j0 = <usize>i32x4.extract_lane(others, 0);
      const j1 = <usize>i32x4.extract_lane(others, 1);
      const j2 = <usize>i32x4.extract_lane(others, 2);
      const j3 = <usize>i32x4.extract_lane(others, 3);
      store<u16>(i, load<u16>(j0));
      store<u16>(j0, k);
      store<u16>(i, load<u16>(j1, 2048), 2048);
      store<u16>(j1, k, 2048);
      store<u16>(i, load<u16>(j2, 4096), 4096);
      store<u16>(j2, k, 4096);
      store<u16>(i, load<u16>(j3, 6144), 6144);
      store<u16>(j3, k, 6144);
    }
  }
  store<u64>(words4, seen);

  // The words of all four, 16 bytes for each row, then one estimate after the other: its table stays near. The first is
  // read as its words come, for else the generator would only wait for its own last step.
  const half = f64x2.splat(0.5);
  const small = f64x2.splat(2.3283064365386963e-10); // 2^-32
  const body = <usize>load<u32>(r, 4) + 6688;
  const shifts = v128.load64_splat(r, 16);
  const scales = v128.load64_splat(r, 24);
  let first = rows + load<u32>(r, 8);
  for (let i: usize = 0; i < n; i += 2) {
    const word = i32x4.add(i32x4.add(a, b), t);
    t = i32x4.add(t, one);
    a = v128.xor(b, i32x4.shr_u(b, 9));
    b = i32x4.add(c, i32x4.shl(c, 3));
    c = i32x4.add(v128.or(i32x4.shl(c, 21), i32x4.shr_u(c, 11)), word);
    const next = i32x4.add(i32x4.add(a, b), t);
    t = i32x4.add(t, one);
    a = v128.xor(b, i32x4.shr_u(b, 9));
    b = i32x4.add(c, i32x4.shl(c, 3));
    c = i32x4.add(v128.or(i32x4.shl(c, 21), i32x4.shr_u(c, 11)), next);
    v128.store(words4 + (i << 4), word);
    v128.store(words4 + (i << 4), next, 16);
    const two = load<u32>(strata4 + (i << 1));
    const c0 = v128.load(body + ((<usize>(two & 0xffff)) << 3));
    const c1 = v128.load(body + ((<usize>(two >> 16)) << 3));
    const pair = v128.shuffle<i32>(word, next, 0, 4, 1, 5);
    const value = between(c0, c1, f64x2.mul(f64x2.add(f64x2.convert_low_i32x4_u(pair), half), small));
    const drawn = f64x2.add(shifts, f64x2.mul(scales, value));
    if (i + 1 < n) v128.store(first, drawn);
    else v128.store64_lane(first, drawn, 0);
    first += 16;
  }
  for (let lane: usize = 0; lane < 4; lane++) {
    const record = r + lane * size;
    const strata = strata4 + (lane << 11);
    const words = words4 + (lane << 2);
    const table = <usize>load<u32>(record, 4);
    const out = rows + load<u32>(record, 8);
    const shift = load<f64>(record, 16);
    const scale = load<f64>(record, 24);
    if (lane > 0) readBody(table, strata, words, shift, scale, out, n);
    readTails(table, strata, words, shift, scale, out, n);
    if (load<u32>(record, 12)) {
      const below = cut(out, n);
      if (below > 0) tell(record, told, below);
    }
  }
}

/** The straight lines between two neighbours, `way` along. */
function between(c0: v128, c1: v128, way: v128): v128 {
  const from = v128.shuffle<f64>(c0, c1, 0, 2);
  return f64x2.add(from, f64x2.mul(way, f64x2.sub(v128.shuffle<f64>(c0, c1, 1, 3), from)));
}

/** Quantiles of a whole row as if every stratum were a cell of the table's body; those of the tails mean nothing yet. */
function readBody(
  table: usize,
  strata: usize,
  words: usize,
  shift: f64,
  scale: f64,
  out: usize,
  n: usize,
): void {
  const shifts = f64x2.splat(shift);
  const scales = f64x2.splat(scale);
  const half = f64x2.splat(0.5);
  const small = f64x2.splat(2.3283064365386963e-10); // 2^-32
  const body = table + 6688; // entry 836: body cell 0
  const end = out + (n << 3);
  for (; out < end; out += 16) {
    const two = load<u32>(strata);
    const c0 = v128.load(body + ((<usize>(two & 0xffff)) << 3));
    const c1 = v128.load(body + ((<usize>(two >> 16)) << 3));
    const pair = v128.load32_lane(words + 16, v128.load32_zero(words), 1);
    // (word + 1/2) / 2^32: exact.
    const way = f64x2.mul(f64x2.add(f64x2.convert_low_i32x4_u(pair), half), small);
    const value = f64x2.add(shifts, f64x2.mul(scales, between(c0, c1, way)));
    if (out + 8 < end) v128.store(out, value);
    else v128.store64_lane(out, value, 0);
    strata += 4;
    words += 32;
  }
}

/** The draws in the strata of the tails, 64 of a whole block: found 64 rows at a time, so that no branch is a guess. */
function readTails(
  table: usize,
  strata: usize,
  words: usize,
  shift: f64,
  scale: f64,
  out: usize,
  n: usize,
): void {
  const least = i16x8.splat(32);
  const count = i16x8.splat(960);
  for (let row: usize = 0; row < n; row += 64) {
    let found: u64 = 0;
    for (let k: usize = 0; k < 8; k++) {
      const eight = v128.load(strata + ((row + (k << 3)) << 1));
      const outside = i16x8.ge_u(i16x8.sub(eight, least), count);
      found |= (<u64>i16x8.bitmask(outside)) << ((<u64>k) << 3);
    }
    if (n - row < 64) found &= ((<u64>1) << (<u64>(n - row))) - 1;
    while (found !== 0) {
      const k = row + <usize>ctz(found);
      found &= found - 1;
      const stratum = <u64>load<u16>(strata + (k << 1));
      // The uniform in units of 2^-43; from the upper end, its distance from 1.
      const bits = (stratum << 33) + ((<u64>load<u32>(words + (k << 4))) << 1) + 1;
      const upper = -(<u64>(stratum >= 992));
      const near = (bits ^ upper) - upper + (0x80000000000 & upper);
      const v = <f64>(<i64>near) * 0.0078125; // 2^-7, so in units of 2^-36, as in `tail`
      const raw = reinterpret<u64>(v);
      let value: f64;
      if (v >= 16.0) {
        // Octave and cell are the exponent and the next four bits; what is left is the way into the cell.
        const entry = table + (3472 & <usize>upper) + ((<usize>(raw >> 48) - 16431) << 3);
        const way = reinterpret<f64>(((raw << 4) & 0xfffffffffffff) | 0x3ff0000000000000) - 1.0;
        const from = load<f64>(entry);
        value = from + way * (load<f64>(entry, 8) - from);
      } else {
        value = tail(table, <f64>(<i64>bits) * 1.1368683772161603e-13); // 2^-43
      }
      store<f64>(out + (k << 3), shift + scale * value);
    }
  }
}

/** Sets what lies below 0 to 0; how many. */
function cut(out: usize, n: usize): u32 {
  let below: u32 = 0;
  const zero = f64x2.splat(0);
  const end = out + (n << 3);
  for (; out < end; out += 16) {
    const value = v128.load(out);
    const negative = f64x2.lt(value, zero);
    if (out + 8 < end) {
      v128.store(out, v128.andnot(value, negative));
      below += popcnt(i64x2.bitmask(negative));
    } else {
      v128.store64_lane(out, v128.andnot(value, negative), 0);
      below += i64x2.bitmask(negative) & 1;
    }
  }
  return below;
}
