/**
 * Writes 32-bit random words: the generator sfc32 of Chris Doty-Humphrey (PractRand, public domain).
 *
 * The 15 first outputs are thrown away, as the author's own seeding does, so that seeds which differ in one
 * bit have nothing in common. Period at least 2^32, about 2^127 on average; passes PractRand and BigCrush.
 * Integer operations only: the same words in every engine.
 *
 * @param seed  Four words: a, b, c and the counter.
 * @param out   Filled to its end.
 *
 * Cost   about 1 ns a word; the state stays in local variables.
 * Source PractRand 0.94, `sfc.cpp`; known answers in tests/reference/sampling/streams.test.ts.
 */
export function fillSfc32(seed: Uint32Array, out: Uint32Array): Uint32Array {
  let a = (seed[0] ?? 0) | 0;
  let b = (seed[1] ?? 0) | 0;
  let c = (seed[2] ?? 0) | 0;
  let counter = (seed[3] ?? 0) | 0;
  const n = out.length;
  for (let i = -15; i < n; i++) {
    const word = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + word) | 0;
    if (i >= 0) out[i] = word;
  }
  return out;
}
