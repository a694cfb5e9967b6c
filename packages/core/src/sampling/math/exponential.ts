const ln2High = 0.6931471803691238; // 33 bits, so k * ln2High is exact for |k| < 2^20
const ln2Low = 1.9082149292705877e-10; // the rest of ln 2

// 2^k for k = -1074 ... 1023, by exact doubling and halving: `pow` need not be exact everywhere.
const powerOfTwo = new Float64Array(2098);
for (let k = 0, x = 1; k <= 1023; k++, x *= 2) powerOfTwo[1074 + k] = x;
for (let k = 0, x = 1; k <= 1074; k++, x /= 2) powerOfTwo[1074 - k] = x;

/**
 * e^x by + - * / alone: the same bits in every engine, which `Math.exp` does not promise.
 *
 * x = k ln 2 + r with |r| <= ln 2 / 2; then e^r = 1 + 2r / (r coth(r/2) - r), the coth by its Bernoulli series.
 *
 * Error  below 1e-15 relative for |x| < 700 (tests/reference/sampling/functions.test.ts).
 * Cost   about 10 ns.
 * Source NIST DLMF 4.19.6 (series of coth, with Bernoulli numbers).
 */
export function exponential(x: number): number {
  if (Number.isNaN(x)) return x;
  if (x < -745.2) return 0;
  if (x > 709.8) return Number.POSITIVE_INFINITY;
  const k = Math.floor(x * Math.LOG2E + 0.5);
  const high = x - k * ln2High;
  const low = k * ln2Low;
  const r = high - low;
  const z = r * r;
  // r coth(r/2) - 2 = z/6 - z^2/360 + z^3/15120 - ...
  const tail =
    z *
    (1 / 6 -
      z *
        (1 / 360 -
          z *
            (1 / 15120 -
              z * (1 / 604800 - z * (1 / 23950080 - z * (691 / 653837184000 - z / 37362124800))))));
  // e^r = 1 + r + r (r - tail) / (2 + tail - r), with what `r` lost in rounding given back.
  const e = 1 + (high - (low - (r * (r - tail)) / (2 + tail - r)));
  if (k > 1023) return e * 2 * (powerOfTwo[1074 + 1023] as number);
  // Two steps below the normal range, so that only the last one rounds.
  if (k < -1021) return e * (powerOfTwo[1074 + k + 100] as number) * (powerOfTwo[1074 - 100] as number);
  return e * (powerOfTwo[1074 + k] as number);
}
