/** Sums of chances and shares that differ by at most this are equal (plan format 1). */
export const TOLERANCE = 1e-9;
