/**
 * The first page of the memory is the kernel's own (packages/core/src/kernel/layout.ts has the same numbers);
 * rows begin after it. Nothing in it outlives a call. Hot loops keep an address in a local: a global is read again
 * after every store.
 */

/** Strata of a Latin hypercube block, 1,024 of 16 bits. */
export let STRATA: usize = 0;
/** Eight vectors of masks. */
export let MASKS: usize = 4096;
/** Strata of four blocks of a Latin hypercube at once, 2,048 bytes each. */
export let STRATA4: usize = 8192;
/** Four words for each of 1,024 rows. */
export let WORDS4: usize = 16384;
/** Counts by bin, 8,192 of 32 bits. */
export let BINS: usize = 8192;
/** The list a bin is gathered into, 8,192 of 8 bits; 0: none. */
export let LISTS: usize = 40960;
/** Where each list is filled next, up to 256 addresses; then where each begins. */
export let CURSORS: usize = 49152;
export let BEGINS: usize = 50176;
/** Wanted ranks, ascending, up to 200 of 32 bits. */
export let RANKS: usize = 51200;
/** What a call answers besides its return value: up to 200 doubles. */
export let ANSWERS: usize = 52224;

/** A text to be hashed, up to 5,632 characters of 16 bits. */
export let CHARS: usize = 54272;

/**
 * Moves the page to another place, a multiple of its size: threads that share a memory have one each, and the functions
 * called through this instance use it.
 */
export function usePage(at: usize): void {
  STRATA = at;
  MASKS = at + 4096;
  STRATA4 = at + 8192;
  WORDS4 = at + 16384;
  BINS = at + 8192;
  LISTS = at + 40960;
  CURSORS = at + 49152;
  BEGINS = at + 50176;
  RANKS = at + 51200;
  ANSWERS = at + 52224;
  CHARS = at + 54272;
}

/** The project's tolerance: moments this close are equal. */
export const TOLERANCE: f64 = 1e-9;
/** 2^52: a whole number below 2^32 added to it stands in the low half of the sum's bits. */
export const MAGIC: f64 = 4503599627370496.0;
