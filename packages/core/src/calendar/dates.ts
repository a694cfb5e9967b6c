/**
 * Calendar dates as whole numbers. Days are counted from 1970-01-01 (day 0) in the proleptic Gregorian
 * calendar of ISO 8601; no clock, no time zone.
 *
 * Source: days-from-civil and its inverse after H. Hinnant, "chrono-Compatible Low-Level Date Algorithms"
 * (2013), recalled; checked against the platform's UTC arithmetic in the tests.
 */

/** Number of the day `iso` (an existing `YYYY-MM-DD`) counted from 1970-01-01. */
export function dayNumber(iso: string): number {
  const year = Number(iso.slice(0, 4));
  const month = Number(iso.slice(5, 7));
  const day = Number(iso.slice(8, 10));
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

/** The ISO date of day number `n`; years before 0 or after 9999 are not expected. */
export function isoDate(n: number): string {
  const z = n + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const mp = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * mp + 2) / 5) + 1;
  const month = mp < 10 ? mp + 3 : mp - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** 0 = Monday ... 6 = Sunday. 1970-01-01 was a Thursday. */
export function weekdayOf(n: number): number {
  return (((n + 3) % 7) + 7) % 7;
}
