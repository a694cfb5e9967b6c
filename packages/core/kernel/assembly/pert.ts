import { MASKS, WORDS4 } from "./layout";
import { exponential, logarithm } from "./math";

// Quantile tables of the PERT law, as packages/core/src/sampling/table (pertPiece.ts, pertTable.ts) makes them.
// A side (one half of the law) is 51 doubles: alpha, beta - 1, ln B, and 48 coefficients. A piece is nine nodes, nine
// weights, and for each node the values of 433 lower, 433 upper tail entries and 961 of the body.

const nodes: usize = 9;
const tailEntries: usize = 433;
const bodyEntries: usize = 961;
/** Entries of a piece for one node. */
const entries: usize = 1827;
/** Entries of a table; where its upper tail and its body begin. */
const upperStart: usize = 434;
const bodyStart: usize = 868;
const length: usize = 1829;

function series(side: usize, y: f64): f64 {
  let sum: f64 = 0;
  let at = side + 16 + ((<usize>(y < 0.125 ? 18 : y < 0.25 ? 26 : 48)) << 3);
  for (; at > side + 16; at -= 8) sum = sum * y + load<f64>(at);
  return sum;
}

/** ln y with F(y) = p, as in betaSide.ts. */
function logQuantile(side: usize, logP: f64, start: f64): f64 {
  const alpha = load<f64>(side);
  const exponent = load<f64>(side, 8);
  const logB = load<f64>(side, 16);
  const logHalf: f64 = -Math.LN2;
  let logY = min(start, logHalf);
  for (let i = 0; i < 60; i++) {
    const y = exponential(logY);
    const g = series(side, y);
    const short = logP - (alpha * logY + logarithm(g) - logB);
    const power = exponent === 0 ? 1 : exponential(exponent * logarithm(1.0 - y));
    const step = (short * g) / power;
    logY += step;
    if (logY > logHalf) logY = logHalf;
    if (step < 1e-8 && step > -1e-8) break;
  }
  return logY;
}

/** One tail at one node: distances from the end divided by u^(1/alpha). `logs`: ln u from entry 1 on. */
export function pertTail(side: usize, logs: usize, out: usize): void {
  const alpha = load<f64>(side);
  let before: f64 = -36;
  let logY: f64 = -36;
  for (let e: usize = 0; e < tailEntries; e++) {
    const logU = load<f64>(logs + (e << 3));
    const start = 2.0 * logY - before;
    before = logY;
    logY = logQuantile(side, logU, start);
    store<f64>(out + (e << 3), exponential(logY - logU / alpha));
  }
}

/** The body at one node: up to `split` from the left side, from there on from the right. `logs`: ln u of the cells. */
export function pertBody(left: usize, right: usize, logs: usize, split: usize, out: usize): void {
  let before: f64 = -1;
  let logY: f64 = -1;
  for (let e: usize = 0; e < split; e++) {
    const start = 2.0 * logY - before;
    before = logY;
    logY = logQuantile(left, load<f64>(logs + (e << 3)), start);
    store<f64>(out + (e << 3), exponential(logY));
  }
  before = -1;
  logY = -1;
  for (let e = bodyEntries; e > split; ) {
    e--;
    const start = 2.0 * logY - before;
    before = logY;
    logY = logQuantile(right, load<f64>(logs + ((bodyEntries - 1 - e) << 3)), start);
    store<f64>(out + (e << 3), 1.0 - exponential(logY));
  }
}

/** `count` entries of the table at x, from those of the nodes; `basis` stands at MASKS. */
function interpolate(at: usize, out: usize, count: usize): void {
  const basis = MASKS;
  const b0 = v128.load64_splat(basis);
  const b1 = v128.load64_splat(basis, 8);
  const b2 = v128.load64_splat(basis, 16);
  const b3 = v128.load64_splat(basis, 24);
  const b4 = v128.load64_splat(basis, 32);
  const b5 = v128.load64_splat(basis, 40);
  const b6 = v128.load64_splat(basis, 48);
  const b7 = v128.load64_splat(basis, 56);
  const b8 = v128.load64_splat(basis, 64);
  const zero = f64x2.splat(0);
  const end = out + (count << 3);
  for (; out < end; out += 16) {
    let sum = f64x2.add(zero, f64x2.mul(b0, v128.load(at)));
    sum = f64x2.add(sum, f64x2.mul(b1, v128.load(at, entries * 8)));
    sum = f64x2.add(sum, f64x2.mul(b2, v128.load(at, entries * 16)));
    sum = f64x2.add(sum, f64x2.mul(b3, v128.load(at, entries * 24)));
    sum = f64x2.add(sum, f64x2.mul(b4, v128.load(at, entries * 32)));
    sum = f64x2.add(sum, f64x2.mul(b5, v128.load(at, entries * 40)));
    sum = f64x2.add(sum, f64x2.mul(b6, v128.load(at, entries * 48)));
    sum = f64x2.add(sum, f64x2.mul(b7, v128.load(at, entries * 56)));
    sum = f64x2.add(sum, f64x2.mul(b8, v128.load(at, entries * 64)));
    if (out + 8 < end) v128.store(out, sum);
    else v128.store64_lane(out, sum, 0);
    at += 16;
  }
}

/** A tail: factor times what was interpolated. `logCells`: ln 16 ... ln 31. */
function tailOf(values: usize, logCells: usize, exponent: f64, out: usize): void {
  const cells = MASKS + 128;
  for (let c: usize = 0; c < 16; c++) {
    store<f64>(cells + (c << 3), exponential(exponent * load<f64>(logCells + (c << 3))));
  }
  store<f64>(out, 0);
  out += 8;
  interpolate(values, out, tailEntries);
  for (let first: usize = 0; first < tailEntries; first += 16) {
    const octave = f64x2.splat(exponential(exponent * Math.LN2 * <f64>(<i32>(first >> 4) - 36)));
    const last = min(first + 16, tailEntries);
    for (let e = first; e < last; e += 2) {
      const factor = f64x2.mul(octave, v128.load(cells + ((e & 15) << 3)));
      const at = out + (e << 3);
      const value = f64x2.mul(factor, v128.load(at));
      if (e + 1 < last) v128.store(at, value);
      else v128.store64_lane(at, value, 0);
    }
  }
}

/** The table of the law with its mode at x <= 1/2 (`mirrored`: at 1 - x). */
export function pertTable(piece: usize, logCells: usize, x: f64, mirrored: i32, table: usize): void {
  for (let j: usize = 0; j < nodes; j++) {
    let product = load<f64>(piece + ((nodes + j) << 3));
    for (let k: usize = 0; k < nodes; k++) if (k !== j) product *= x - load<f64>(piece + (k << 3));
    store<f64>(MASKS + (j << 3), product);
  }
  const values = piece + ((2 * nodes) << 3);
  const upper = table + (upperStart << 3);
  tailOf(values, logCells, 1.0 / (1.0 + 4.0 * x), mirrored ? upper : table);
  tailOf(values + (tailEntries << 3), logCells, 1.0 / (5.0 - 4.0 * x), mirrored ? table : upper);
  const body = values + ((2 * tailEntries) << 3);
  const one = f64x2.splat(1);
  if (mirrored) {
    const straight = WORDS4;
    interpolate(body, straight, bodyEntries);
    for (let e: usize = 0; e < bodyEntries; e += 2) {
      const value = f64x2.sub(one, v128.load(straight + (e << 3)));
      v128.store64_lane(table + ((length - 1 - e) << 3), value, 0);
      if (e + 1 < bodyEntries) v128.store64_lane(table + ((length - 2 - e) << 3), value, 1);
    }
  } else interpolate(body, table + (bodyStart << 3), bodyEntries);
  for (let e: usize = 0; e <= tailEntries; e += 2) {
    v128.store(upper + (e << 3), f64x2.sub(one, v128.load(upper + (e << 3))));
  }
  store<f64>(table + (bodyStart << 3), load<f64>(table + (tailEntries << 3)));
  store<f64>(table + ((length - 1) << 3), load<f64>(upper + (tailEntries << 3)));
}

/**
 * Tables `from` up to `to` (not included) of a list of 32 bytes each: address of the piece, whether mirrored, address of
 * the table (32 bits each), and, from byte 16 on, x.
 */
export function pertTables(list: usize, from: u32, to: u32, logCells: usize): void {
  const end = list + ((<usize>to) << 5);
  for (let at = list + ((<usize>from) << 5); at < end; at += 32) {
    pertTable(load<u32>(at), logCells, load<f64>(at, 16), load<u32>(at, 4), load<u32>(at, 8));
  }
}
