import { dayNumber, weekdayOf } from "../../../calendar/dates.ts";
import type { IsoDate } from "../../../plan/types.ts";

/** A number as a plan states it: commas between thousands, no more digits than it was written with. */
export function numberWords(value: number): string {
  const [whole = "0", part] = String(Number(Math.abs(value).toPrecision(12))).split(".");
  const digits = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return `${value < 0 ? "−" : ""}${part === undefined ? digits : `${digits}.${part}`}`;
}

/** "EUR 4,000". */
export function moneyWords(value: number, currency: string): string {
  return `${value < 0 ? "−" : ""}${currency} ${numberWords(Math.abs(value))}`;
}

/** "12.5 %". */
export function percentWords(share: number): string {
  return `${numberWords(Number((100 * share).toPrecision(4)))} %`;
}

const weekdays = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
const months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/** "Tue 16 Nov 2027". */
export function dateWords(iso: IsoDate): string {
  const [year, month, day] = iso.split("-");
  const weekday = weekdays[weekdayOf(dayNumber(iso))];
  return `${weekday} ${Number(day)} ${months[Number(month) - 1]} ${year}`;
}

/** "Mon 16 Aug 2027 to Fri 20 Aug 2027", one date where they are the same. */
export function datesWords(range: { from: IsoDate; to: IsoDate }): string {
  return range.from === range.to
    ? dateWords(range.from)
    : `${dateWords(range.from)} to ${dateWords(range.to)}`;
}

/** "a", "a and b", "a, b and c". */
export function listWords(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
}

/** "1 task", "3 tasks". */
export function countWords(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
