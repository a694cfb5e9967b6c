import { formatMoney, isoToMs } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { roundedSum } from "./answerWords.ts";

/** The committed date or sum is another, as shown. */
export function moved(now: Forecast, was: Forecast): boolean {
  return now.committed.date !== was.committed.date || roundedSum(now) !== roundedSum(was);
}

/** What a change did to the committed date and sum: "7 calendar days later, EUR 3,100 more". */
export function movedWords(now: Forecast, was: Forecast): string {
  const days = Math.round((isoToMs(now.committed.date) - isoToMs(was.committed.date)) / 86_400_000);
  // Of the sums as shown: the reader can check it by head.
  const money = roundedSum(now) - roundedSum(was);
  const date =
    days === 0
      ? "the same date"
      : `${Math.abs(days)} calendar ${Math.abs(days) === 1 ? "day" : "days"} ${days > 0 ? "later" : "earlier"}`;
  if (now.plan.currency !== was.plan.currency) return date;
  const sum =
    money === 0
      ? "the same sum"
      : `${formatMoney(Math.abs(money), now.plan.currency)} ${money > 0 ? "more" : "less"}`;
  return `${date}, ${sum}`;
}
