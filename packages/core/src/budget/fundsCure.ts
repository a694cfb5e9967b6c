import { dayNumber, isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import type { Plan } from "../plan/types.ts";
import type { FundsCure, MonthMoney } from "./types.ts";

/**
 * What would make the money released cover every month at the level committed to: more of it, or the same earlier.
 *
 * Money is compared at the ends of months: what is released by the last day of a month has to cover what the level has
 * spent by then. When within the month it is needed the plan does not say.
 */
export function fundsCure(plan: Plan, months: readonly MonthMoney[], committed: number): FundsCure {
  const funds = [...plan.commitment.funds].sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
  const first = months.find(({ short = 0 }) => short > 0);
  const most = months.reduce((largest, { short = 0 }) => Math.max(largest, short), 0);
  const all = funds.reduce((sum, { amount }) => sum + amount, 0);
  const earlier: FundsCure["earlier"] = [];
  let before = 0;
  for (const { from, amount } of funds) {
    const needed = months.find(({ byEnd }) => byEnd.committed > before + tolerance * Math.max(1, before));
    before += amount;
    if (needed === undefined) break;
    const neededBy = lastDayOf(needed.month);
    const days = dayNumber(from) - dayNumber(neededBy);
    if (days > 0) earlier.push({ from, amount, neededBy, days });
  }
  return {
    covered: first === undefined,
    ...(first === undefined
      ? {}
      : {
          firstShort: {
            month: first.month,
            chanceCovered: first.chanceCovered ?? 0,
            short: first.short ?? 0,
          },
          more: { amount: most, by: lastDayOf(first.month) },
        }),
    earlier,
    lacking: Math.max(0, committed - all),
  };
}

/** The last day of a month such as `2027-03`. */
export function lastDayOf(month: string): string {
  const [year = 0, number = 1] = month.split("-").map(Number);
  const next = number === 12 ? [year + 1, 1] : [year, number + 1];
  return isoDate(dayNumber(`${String(next[0]).padStart(4, "0")}-${String(next[1]).padStart(2, "0")}-01`) - 1);
}
