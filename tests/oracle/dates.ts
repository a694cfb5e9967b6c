/** Milliseconds of one day; dates are read as UTC midnights, so no clock change can shift them. */
const DAY = 86_400_000;

/** Number of the day `date` counted from `start` (day 0); both are ISO 8601 calendar dates. */
export function dayNumber(start: string, date: string): number {
  return Math.round((Date.parse(`${date}T00:00:00Z`) - Date.parse(`${start}T00:00:00Z`)) / DAY);
}

/** ISO 8601 calendar date of day `day` counted from `start`. */
export function dateOfDay(start: string, day: number): string {
  return new Date(Date.parse(`${start}T00:00:00Z`) + day * DAY).toISOString().slice(0, 10);
}

/** Weekday of day `day` counted from `start`: 0 is Monday, 6 is Sunday. */
export function weekdayOfDay(start: string, day: number): number {
  return (new Date(`${dateOfDay(start, day)}T00:00:00Z`).getUTCDay() + 6) % 7;
}
