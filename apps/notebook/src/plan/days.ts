/** Days of the Gregorian calendar as whole numbers since 1970-01-01, and back; no clock and no time zone. */
export function dayOf(iso: string): number {
  return Math.round(Date.parse(`${iso}T00:00:00Z`) / 86_400_000);
}

export function isoOf(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/** 0 = Monday ... 6 = Sunday. 1970-01-01 was a Thursday. */
export function weekdayOf(day: number): number {
  return (((day + 3) % 7) + 7) % 7;
}

/** The same day of the month so many months later; the last of a month that is shorter. */
export function monthsLater(day: number, months: number): number {
  const [year = 0, month = 1, date = 1] = isoOf(day).split("-").map(Number);
  const first = Date.UTC(year, month - 1 + months, 1) / 86_400_000;
  const length = Date.UTC(year, month + months, 1) / 86_400_000 - first;
  return first + Math.min(date, length) - 1;
}

/** First day and number of days of the month that a day is in. */
export function monthOf(day: number): { first: number; length: number } {
  const [year = 0, month = 1] = isoOf(day).split("-").map(Number);
  const first = Date.UTC(year, month - 1, 1) / 86_400_000;
  return { first, length: Date.UTC(year, month, 1) / 86_400_000 - first };
}
