import type { Brief, Effect, Someone } from "@leeway/core";
import { formatChance } from "../words/formatChance.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { plainName } from "../words/plainName.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { roundToLimits } from "../words/roundToLimits.ts";

/** A chance in words and in figures: "about 7 times in 10 (69 %)". A finite number of futures never says never. */
export function chanceWords(p: number): string {
  return `${formatChance(p, "tenths")} (${formatPercent(Math.max(0.005, Math.min(0.995, p)))})`;
}

/** The committed sum, or one near it, to the digits the committed sum's limits support. */
export function supported(brief: Brief, value: number): string {
  const { committed } = brief.commitment;
  const half = (committed.costHigh - committed.costLow) / 2;
  return formatMoney(roundToLimits(value, value - half, value + half), brief.plan.currency);
}

/** A sum that the plan states: to the unit. */
export function stated(brief: Brief, value: number): string {
  return formatMoney(Math.round(value), brief.plan.currency);
}

/** A mean over the futures: two significant digits. */
export function rough(brief: Brief, value: number, signed = false): string {
  return formatMoney(roundSignificant(value, 2), brief.plan.currency, signed);
}

/** Days, and money where the plan speaks of it: "+3.2 working days, +EUR 1,200". */
export function effectWords(brief: Brief, { workingDays, money }: Effect): string {
  const moves = [
    ...(Math.abs(workingDays) < 0.05 ? [] : [formatDays(workingDays, "working day", true)]),
    ...(!brief.spends || Math.abs(money) < 0.5 ? [] : [rough(brief, money, true)]),
  ];
  return moves.length === 0
    ? brief.spends
      ? "moves neither date nor sum"
      : "does not move the date"
    : moves.join(", ");
}

/** "Ines Calloway (Project lead)" */
export function who(someone: Someone, most: number): string {
  const name = plainName(someone.name, most);
  return someone.role === undefined ? name : `${name} (${plainName(someone.role, most)})`;
}

const monthNames =
  "January February March April May June July August September October November December".split(" ");

/** "2027-10" as "October 2027", or with so many letters of the month. */
export function monthWords(month: string, letters = 9): string {
  return `${(monthNames[Number(month.slice(5, 7)) - 1] ?? month).slice(0, letters)} ${month.slice(0, 4)}`;
}
