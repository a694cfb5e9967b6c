import { formatDays, formatMoney, isoToMs, roundMove } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { roundedSum, spends } from "./answerWords.ts";

/** The committed date or sum is another, as shown. */
export function moved(now: Forecast, was: Forecast): boolean {
  return now.committed.date !== was.committed.date || roundedSum(now) !== roundedSum(was);
}

/**
 * What a change did to the committed date and sum: "4.6 working days (7 calendar days) later, EUR 3,100 more". Working
 * days are what the section Changes counts in, and the sum is rounded as there; calendar days are what lies between the
 * two dates.
 *
 * @param oneCalendar  Both count their working days on the same calendar. Where they do not, these say nothing of how far it moved.
 */
export function movedWords(now: Forecast, was: Forecast, oneCalendar: boolean): string {
  const date = dateWords(now, was, oneCalendar && now.plan.start === was.plan.start);
  if (now.plan.currency !== was.plan.currency || !(spends(now) || spends(was))) return date;
  return `${date}, ${sumWords(now, was)}`;
}

/** In the place of a date and a sum that are the same twice. What moved by less than they are rounded to is said beside. */
export function nothingMoved(words: string): string {
  return words.includes("(") ? `Nothing moved by as much as is shown: ${words}.` : `Nothing moved: ${words}.`;
}

/** The figure that Changes has; where the sums beside it are rounded to coarser ones, it says why they seem to lie otherwise apart. */
function sumWords(now: Forecast, was: Forecast): string {
  const money = roundMove(now.committed.cost - was.committed.cost);
  const shown = roundedSum(now) - roundedSum(was);
  if (money === 0) return "the same sum";
  const moved = `${formatMoney(Math.abs(money), now.plan.currency)} ${money > 0 ? "more" : "less"}`;
  const seems = roundMove(shown) === money ? moved : `${moved} before rounding`;
  return shown === 0 ? `the same sum (${seems})` : seems;
}

function dateWords({ committed: now }: Forecast, { committed: was }: Forecast, counts: boolean): string {
  const days = Math.round((isoToMs(now.date) - isoToMs(was.date)) / 86_400_000);
  const calendar = formatDays(Math.abs(days), "calendar day");
  const difference = now.workingDays - was.workingDays;
  const working = formatDays(Math.abs(difference));
  const none = working.startsWith("0 ");
  if (days === 0)
    return none || !counts
      ? "the same date"
      : `the same date (${working} ${difference > 0 ? "later" : "earlier"})`;
  const way = days > 0 ? "later" : "earlier";
  if (!counts) return `${calendar} ${way}`;
  return `${none ? "no working day" : working} (${calendar}) ${way}`;
}
