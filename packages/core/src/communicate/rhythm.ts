import { dayNumber, isoDate } from "../calendar/dates.ts";
import type { InformEvery, IsoDate } from "../plan/types.ts";

type Every = Exclude<InformEvery, "milestone">;
/** Beyond this a rhythm is cut: a century of weeks. */
const MOST = 5300;

/**
 * The days of a rhythm from its first to `until`, both included. Weeks keep the day of the week. Months keep the day
 * of the month; where a month is too short its last day stands in, and the next month has the day again.
 */
export function rhythm(every: Every, first: IsoDate, until: IsoDate): IsoDate[] {
  const days: IsoDate[] = [];
  for (let k = 0; k < MOST; k++) {
    const day =
      every === "week" || every === "two-weeks"
        ? isoDate(dayNumber(first) + k * (every === "week" ? 7 : 14))
        : monthsAfter(first, k * (every === "month" ? 1 : 3));
    if (day > until) break;
    days.push(day);
  }
  return days;
}

function monthsAfter(first: IsoDate, months: number): IsoDate {
  const count = Number(first.slice(0, 4)) * 12 + Number(first.slice(5, 7)) - 1 + months;
  const month = (year: number, index: number) =>
    `${String(year + Math.floor(index / 12)).padStart(4, "0")}-${String((index % 12) + 1).padStart(2, "0")}`;
  const begins = dayNumber(`${month(0, count)}-01`);
  const length = dayNumber(`${month(0, count + 1)}-01`) - begins;
  return isoDate(begins + Math.min(Number(first.slice(8, 10)), length) - 1);
}
