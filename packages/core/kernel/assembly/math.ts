// As in packages/core/src/sampling/math, the same bits.

const ln2High: f64 = 0.6931471803691238;
const ln2Low: f64 = 1.9082149292705877e-10;

/** 2^k, k from -1022 to 1023. */
function powerOfTwo(k: f64): f64 {
  return reinterpret<f64>((<i64>k + 1023) << 52);
}

/** e^x for |x| < 700. */
export function exponential(x: f64): f64 {
  const k = Math.floor(x * Math.LOG2E + 0.5);
  return significand(x, k) * powerOfTwo(k);
}

/** e^x, as far as doubles go. */
export function exponentialAnywhere(x: f64): f64 {
  if (x < -745.2) return 0;
  if (x > 709.8) return Infinity;
  const k = Math.floor(x * Math.LOG2E + 0.5);
  const e = significand(x, k);
  if (k > 1023) return e * 2.0 * powerOfTwo(1023);
  // Two steps below the normal range, so that only the last one rounds.
  if (k < -1021) return e * powerOfTwo(k + 100) * powerOfTwo(-100);
  return e * powerOfTwo(k);
}

/** e^x / 2^k. */
function significand(x: f64, k: f64): f64 {
  const high = x - k * ln2High;
  const low = k * ln2Low;
  const r = high - low;
  const z = r * r;
  const last: f64 = z / 37362124800.0;
  const tail =
    z *
    (1.0 / 6.0 -
      z *
        (1.0 / 360.0 -
          z *
            (1.0 / 15120.0 -
              z * (1.0 / 604800.0 - z * (1.0 / 23950080.0 - z * (691.0 / 653837184000.0 - last))))));
  return 1.0 + (high - (low - (r * (r - tail)) / (2.0 + tail - r)));
}

/** The natural logarithm of a normal x > 0. */
export function logarithm(x: f64): f64 {
  const raw = reinterpret<u64>(x);
  let e = <f64>(<i32>(raw >> 52) - 1023);
  let m = reinterpret<f64>((raw & 0xfffffffffffff) | 0x3ff0000000000000);
  if (m > Math.SQRT2) {
    m *= 0.5;
    e += 1.0;
  }
  const s = (m - 1.0) / (m + 1.0);
  const z = s * s;
  const w = z * z;
  const odd = 1.0 / 3.0 + w * (1.0 / 7.0 + w * (1.0 / 11.0 + w * (1.0 / 15.0 + w * (1.0 / 19.0))));
  const even = 1.0 / 5.0 + w * (1.0 / 9.0 + w * (1.0 / 13.0 + w * (1.0 / 17.0 + w * (1.0 / 21.0))));
  const series = z * (odd + z * even);
  return e * ln2High + (2.0 * s + (2.0 * s * series + e * ln2Low));
}
