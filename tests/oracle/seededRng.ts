/**
 * Uniforms in [0, 1) from a whole-number seed: the mulberry32 generator (T. Ettinger, 2017, public domain;
 * recalled from memory). Good enough to vary plans; nothing statistical rests on it.
 */
export function seededRng(seed: number): () => number {
  let state = (seed * 0x9e3779b1) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
