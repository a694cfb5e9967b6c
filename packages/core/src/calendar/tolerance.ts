/**
 * Moments, amounts of work and sums of shares that differ by at most this are equal wherever they are
 * compared, rounded or read (plan format, "Calendars and time").
 */
export const tolerance = 1e-9;
