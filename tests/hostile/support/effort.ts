/** Cases in all the files of this folder together, unless `LEEWAY_HOSTILE` says another number. */
const USUAL = 24_000;

const asked = Number(process.env.LEEWAY_HOSTILE ?? USUAL);
if (!Number.isInteger(asked) || asked < 1) throw new Error("LEEWAY_HOSTILE is a whole number of cases");

/** Another one every run; `LEEWAY_HOSTILE_SEED` brings a run back. */
export const SEED = Number(
  process.env.LEEWAY_HOSTILE_SEED ?? (Date.now() ^ (process.pid << 12)) & 0x7fffffff,
);
if (!Number.isInteger(SEED)) throw new Error("LEEWAY_HOSTILE_SEED is a whole number");

let told = false;

/**
 * How often a property is tried and from which seed, for `fc.assert`. The seed is printed, so that whatever is found can
 * be found again.
 *
 * @param share  Of all cases, 0 to 1; the shares of all files add up to 1.
 */
export function effort(share: number): { numRuns: number; seed: number; endOnFailure: boolean } {
  if (!told) {
    told = true;
    console.log(`hostile input: LEEWAY_HOSTILE_SEED=${SEED} LEEWAY_HOSTILE=${asked}`);
  }
  // A long run stops at what it finds: shrinking a million cases helps nobody.
  return { numRuns: Math.max(1, Math.ceil(asked * share)), seed: SEED, endOnFailure: asked > 10 * USUAL };
}

/** How long a file of the long mode may take; vitest's own limit would end it. */
export const PATIENCE = Math.max(120_000, asked * 60);
