import { STRATA } from "./layout";
import { tail } from "./lookUp";

// State of the generator sfc32 (Doty-Humphrey, PractRand) between the loops of one call.
let a: u32 = 0;
let b: u32 = 0;
let c: u32 = 0;
let counter: u32 = 0;

/** Seeds the generator and throws 15 words away. */
function seed(w0: u32, w1: u32, w2: u32, w3: u32): void {
  for (let k = 0; k < 15; k++) {
    const word = w0 + w1 + w3;
    w3++;
    w0 = w1 ^ (w1 >> 9);
    w1 = w2 + (w2 << 3);
    w2 = rotl(w2, 21) + word;
  }
  a = w0;
  b = w1;
  c = w2;
  counter = w3;
}

/** Seeds, and puts the strata 0 ... 1,023 in random order. */
function shuffle(w0: u32, w1: u32, w2: u32, w3: u32): void {
  seed(w0, w1, w2, w3);
  let x = a;
  let y = b;
  let z = c;
  let t = counter;
  const strata = STRATA;
  for (let i: u32 = 0; i < 1024; ) {
    const word = x + y + t;
    t++;
    x = y ^ (y >> 9);
    y = z + (z << 3);
    z = rotl(z, 21) + word;
    const at = strata + ((<usize>i) << 1);
    const other = strata + ((<usize>((<u64>word * <u64>(i + 1)) >> 32)) << 1);
    store<u16>(at, load<u16>(other));
    store<u16>(other, <u16>i);
    i++;
  }
  a = x;
  b = y;
  c = z;
  counter = t;
}

/** One draw in each of the 1,024 strata, in random order. */
export function fillLatin(w0: u32, w1: u32, w2: u32, w3: u32, out: usize): void {
  shuffle(w0, w1, w2, w3);
  let x = a;
  let y = b;
  let z = c;
  let t = counter;
  const strata = STRATA;
  for (let i: usize = 0; i < 1024; i++) {
    const word = x + y + t;
    t++;
    x = y ^ (y >> 9);
    y = z + (z << 3);
    z = rotl(z, 21) + word;
    // 43 bits: stratum, word, and one half at the end. Exact, like every step of the plain twin.
    const bits = ((<u64>load<u16>(strata + (i << 1))) << 33) + ((<u64>word) << 1) + 1;
    store<f64>(out + (i << 3), <f64>(<i64>bits) * 1.1368683772161603e-13); // 2^-43
  }
}

/** 1,024 independent draws. */
export function fillPlain(w0: u32, w1: u32, w2: u32, w3: u32, out: usize): void {
  seed(w0, w1, w2, w3);
  let x = a;
  let y = b;
  let z = c;
  let t = counter;
  for (let i: usize = 0; i < 1024; i++) {
    const word = x + y + t;
    t++;
    x = y ^ (y >> 9);
    y = z + (z << 3);
    z = rotl(z, 21) + word;
    store<f64>(out + (i << 3), <f64>(<i64>(((<u64>word) << 1) + 1)) * 1.1641532182693481e-10); // 2^-33
  }
}

/**
 * `fillLatin` and `lookUp` in one. In the body of the table the stratum is the cell and the jitter the way
 * into it, so uniforms are only made for the 64 strata of the tails.
 */
export function drawLatin(
  w0: u32,
  w1: u32,
  w2: u32,
  w3: u32,
  table: usize,
  shift: f64,
  scale: f64,
  out: usize,
  n: usize,
  cut: i32,
): i32 {
  shuffle(w0, w1, w2, w3);
  let x = a;
  let y = b;
  let z = c;
  let t = counter;
  let below = 0;
  const strata = STRATA;
  for (let i: usize = 0; i < n; i++) {
    const word = x + y + t;
    t++;
    x = y ^ (y >> 9);
    y = z + (z << 3);
    z = rotl(z, 21) + word;
    const stratum = <u32>load<u16>(strata + (i << 1));
    const bits = ((<u64>word) << 1) + 1;
    let value: f64;
    if (stratum - 32 < 960) {
      const cell = table + ((<usize>stratum) << 3);
      const from = load<f64>(cell, 6688); // entry 836: body cell 0
      value = from + <f64>(<i64>bits) * 1.1641532182693481e-10 * (load<f64>(cell, 6696) - from);
    } else {
      value = tail(table, <f64>(<i64>(((<u64>stratum) << 33) + bits)) * 1.1368683772161603e-13);
    }
    value = shift + scale * value;
    if (cut && value < 0) {
      value = 0;
      below++;
    }
    store<f64>(out + (i << 3), value);
  }
  return below;
}
