const ln2High = 0.6931471803691238; // 33 bits, so e * ln2High is exact
const ln2Low = 1.9082149292705877e-10;
const bits = new DataView(new ArrayBuffer(8));

/**
 * The natural logarithm by + - * / and integer operations: the same bits in every engine.
 *
 * x = 2^e m with m between sqrt(1/2) and sqrt(2); ln m = 2 artanh((m - 1) / (m + 1)) by its series.
 *
 * Edges  0 gives -Infinity, a negative number NaN.
 * Error  below 1e-15 relative (tests/reference/sampling/functions.test.ts).
 * Cost   about 30 ns; not in the hot loop, except in the tails of `normalScore`.
 * Source NIST DLMF 4.6.4 (series of artanh).
 */
export function logarithm(x: number): number {
  if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return x;
  let e = 0;
  let scaled = x;
  if (x < 2.2250738585072014e-308) {
    scaled = x * 18014398509481984; // 2^54: out of the subnormal range
    e = -54;
  }
  bits.setFloat64(0, scaled);
  const top = bits.getUint32(0);
  e += (top >>> 20) - 1023;
  bits.setUint32(0, (top & 0xfffff) | 0x3ff00000);
  let m = bits.getFloat64(0);
  if (m > Math.SQRT2) {
    m *= 0.5;
    e++;
  }
  const s = (m - 1) / (m + 1);
  const z = s * s;
  // Every other term in each of two sums, which the processor works on side by side.
  const w = z * z;
  const odd = 1 / 3 + w * (1 / 7 + w * (1 / 11 + w * (1 / 15 + w * (1 / 19))));
  const even = 1 / 5 + w * (1 / 9 + w * (1 / 13 + w * (1 / 17 + w * (1 / 21))));
  const series = z * (odd + z * even);
  return e * ln2High + (2 * s + (2 * s * series + e * ln2Low));
}
