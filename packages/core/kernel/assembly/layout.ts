/**
 * The first page of the memory is the kernel's own (packages/core/src/kernel/layout.ts has the same numbers);
 * rows begin after it. Nothing in it outlives a call.
 */

/** Strata of a Latin hypercube block, 1,024 of 16 bits. */
export const STRATA: usize = 0;
/** Eight vectors of masks. */
export const MASKS: usize = 4096;
/** Strata of four blocks of a Latin hypercube at once, 2,048 bytes each. */
export const STRATA4: usize = 8192;
/** Four words for each of 1,024 rows. */
export const WORDS4: usize = 16384;
/** Counts by bin, 8,192 of 32 bits. */
export const BINS: usize = 8192;
/** The list a bin is gathered into, 8,192 of 8 bits; 0: none. */
export const LISTS: usize = 40960;
/** Where each list is filled next, up to 256 addresses; then where each begins. */
export const CURSORS: usize = 49152;
export const BEGINS: usize = 50176;
/** Wanted ranks, ascending, up to 200 of 32 bits. */
export const RANKS: usize = 51200;
/** What a call answers besides its return value: up to 200 doubles. */
export const ANSWERS: usize = 52224;

/** A text to be hashed, up to 5,632 characters of 16 bits. */
export const CHARS: usize = 54272;

/** The project's tolerance: moments this close are equal. */
export const TOLERANCE: f64 = 1e-9;
/** 2^52: a whole number below 2^32 added to it stands in the low half of the sum's bits. */
export const MAGIC: f64 = 4503599627370496.0;
