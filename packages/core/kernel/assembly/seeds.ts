import { CHARS, MASKS } from "./layout";

// The hash Mash and the generator Alea (Johannes Baagøe, 2010), as in packages/core/src/sampling/streams/seedBlock.ts.

/** One step of the hash: `n` with the next character added. */
function step(n: f64): f64 {
  let h = 0.02519603282416938 * n;
  const whole = Math.floor(h);
  h = (h - whole) * whole;
  const rest = Math.floor(h);
  return rest + (h - rest) * 4294967296.0;
}

/** The same of two. */
function steps(n: v128): v128 {
  let h = f64x2.mul(f64x2.splat(0.02519603282416938), n);
  const whole = f64x2.floor(h);
  h = f64x2.mul(f64x2.sub(h, whole), whole);
  const rest = f64x2.floor(h);
  return f64x2.add(rest, f64x2.mul(f64x2.sub(h, rest), f64x2.splat(4294967296.0)));
}

/** What the hash answers: its low 32 bits as a fraction. */
function fraction(n: f64): f64 {
  const whole = Math.floor(n);
  return (whole >= 4294967296.0 ? whole - 4294967296.0 : whole) * 2.3283064365386963e-10;
}

/** `from` less what the hash answers of two, in [0, 1). */
function less(from: f64, n: v128): v128 {
  let whole = f64x2.floor(n);
  const most = f64x2.splat(4294967296.0);
  whole = f64x2.sub(whole, v128.and(f64x2.ge(whole, most), most));
  const s = f64x2.sub(f64x2.splat(from), f64x2.mul(whole, f64x2.splat(2.3283064365386963e-10)));
  return f64x2.add(s, v128.and(f64x2.lt(s, f64x2.splat(0)), f64x2.splat(1)));
}

/** Word k of two blocks that follow each other, from its value in [0, 1). */
function put(out: usize, k: usize, value: v128): void {
  const words = i32x4.trunc_sat_f64x2_u_zero(f64x2.mul(value, f64x2.splat(4294967296.0)));
  store<u32>(out + (k << 2), i32x4.extract_lane(words, 0));
  store<u32>(out + (k << 2), i32x4.extract_lane(words, 1), 16);
}

function words(out: usize, s0: v128, s1: v128, s2: v128): void {
  const factor = f64x2.splat(2091639);
  const small = f64x2.splat(2.3283064365386963e-10);
  let t = f64x2.add(f64x2.mul(factor, s0), small);
  let carry = f64x2.floor(t);
  const first = f64x2.sub(t, carry);
  put(out, 0, first);
  t = f64x2.add(f64x2.mul(factor, s1), f64x2.mul(carry, small));
  carry = f64x2.floor(t);
  put(out, 1, f64x2.sub(t, carry));
  t = f64x2.add(f64x2.mul(factor, s2), f64x2.mul(carry, small));
  carry = f64x2.floor(t);
  put(out, 2, f64x2.sub(t, carry));
  t = f64x2.add(f64x2.mul(factor, first), f64x2.mul(carry, small));
  put(out, 3, f64x2.sub(t, f64x2.floor(t)));
}

/**
 * The words that seed ten blocks, four of 32 bits each: of the text of `length` 16-bit characters at CHARS, a digit 0 to
 * 9, and a semicolon. Ten texts of one length are hashed side by side, as one alone only waits for its own last step.
 */
export function seedTen(length: usize, out: usize): void {
  let n = step(4022871197.0 + 32.0);
  const start0 = fraction(n);
  n = step(n + 32.0);
  const start1 = fraction(n);
  n = step(n + 32.0);
  const start2 = fraction(n);
  const chars = CHARS;
  const end = chars + (length << 1);
  for (let at = chars; at < end; at += 2) n = step(n + <f64>load<u16>(at));
  let a = f64x2.splat(n);
  let b = a;
  let c = a;
  let d = a;
  let e = a;
  const semicolon = f64x2.splat(59);
  for (let pass = 0; pass < 3; pass++) {
    if (pass > 0) {
      for (let at = chars; at < end; at += 2) {
        const char = f64x2.splat(<f64>load<u16>(at));
        a = steps(f64x2.add(a, char));
        b = steps(f64x2.add(b, char));
        c = steps(f64x2.add(c, char));
        d = steps(f64x2.add(d, char));
        e = steps(f64x2.add(e, char));
      }
    }
    a = steps(f64x2.add(steps(f64x2.add(a, f64x2(48, 49))), semicolon));
    b = steps(f64x2.add(steps(f64x2.add(b, f64x2(50, 51))), semicolon));
    c = steps(f64x2.add(steps(f64x2.add(c, f64x2(52, 53))), semicolon));
    d = steps(f64x2.add(steps(f64x2.add(d, f64x2(54, 55))), semicolon));
    e = steps(f64x2.add(steps(f64x2.add(e, f64x2(56, 57))), semicolon));
    const from = pass === 0 ? start0 : pass === 1 ? start1 : start2;
    const at = MASKS + ((<usize>pass) << 7);
    v128.store(at, less(from, a));
    v128.store(at, less(from, b), 16);
    v128.store(at, less(from, c), 32);
    v128.store(at, less(from, d), 48);
    v128.store(at, less(from, e), 64);
  }
  for (let pair: usize = 0; pair < 5; pair++) {
    const at = MASKS + (pair << 4);
    words(out + (pair << 5), v128.load(at), v128.load(at, 128), v128.load(at, 256));
  }
}
