/**
 * The first page (64 KB) of the kernel's memory is its own; the numbers are those of
 * packages/core/kernel/assembly/layout.ts. Rows begin after it.
 */
export const firstRow = 65536;
/** Wanted ranks: up to 200 integers of 32 bits. */
export const ranksAt = 51200;
/** A word that threads agree by (`spareMemory`); the kernel's code does not use it. */
export const touchAt = 52096;
/** What a call answers besides its return value: up to 200 doubles. */
export const answersAt = 52224;
export const mostRanks = 200;
/** A text to be hashed, 16 bits a character. */
export const charsAt = 54272;
export const mostChars = 5632;
/** A page of WebAssembly memory. */
export const pageSize = 65536;
