/** Milliseconds in a day of 24 hours: the only length a UTC day has in ECMAScript. */
export const dayMs = 86_400_000;

/** The UTC midnight that opens a calendar date, in milliseconds since 1970. NaN when it is not a date. */
export function isoToMs(iso: string): number {
  return /^\d{4}-\d{2}-\d{2}$/.test(iso) ? Date.parse(`${iso}T00:00:00Z`) : Number.NaN;
}

/** The calendar date `day` whole days after `start`. */
export function dayToIso(start: string, day: number): string {
  const date = new Date(isoToMs(start) + Math.floor(day) * dayMs);
  return Number.isNaN(date.getTime()) ? "" : date.toISOString().slice(0, 10);
}

/** The date a moment falls on, read as a start: the day it opens. */
export function startDate(start: string, at: number): string {
  return dayToIso(start, Math.floor(at));
}

/** The date a moment falls on, read as a finish: work done at midnight was done the day before. */
export function finishDate(start: string, at: number): string {
  return dayToIso(start, Math.max(0, Math.ceil(at) - 1));
}
