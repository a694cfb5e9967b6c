import type { Comparison } from "@leeway/core";
import { moneyUnit } from "../axes/roundTicks.ts";
import { daysMeasure } from "../measure/daysMeasure.ts";
import { moneyMeasure } from "../measure/moneyMeasure.ts";
import type { Measure } from "../measure/types.ts";
import { columnDays } from "../words/columnDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { groupDigits } from "../words/groupDigits.ts";
import { roundMove } from "../words/roundMove.ts";

/**
 * How far changes moved a date or a sum. One that moved it alone is rounded as the sentences about it round it, and so is the
 * same figure everywhere; several stand on one place, so that they are seen to add up.
 */
export function moveMeasure({ moves, difference, plan }: Comparison, of: "days" | "money"): Measure {
  const several = (sizes: readonly number[], least: number): boolean =>
    sizes.filter((size) => Math.abs(size) >= least).length > 1;
  if (of === "days") {
    const each = moves.map(({ workingDays }) => workingDays);
    const measure = daysMeasure([difference.workingDays, ...each]);
    if (several(each, 0.05)) return measure;
    return { ...measure, least: 0.05, column: (value) => columnDays(value, true) };
  }
  const { currency } = plan;
  const each = moves.map(({ money }) => money);
  const amounts = [difference.money, ...each];
  const measure = moneyMeasure(amounts, currency);
  if (several(each, 0.5)) return measure;
  const sizes = amounts.map(Math.abs).filter(Number.isFinite);
  const unit = moneyUnit(Math.max(0, ...sizes), currency);
  return {
    ...measure,
    unit: unit.name,
    least: 0.5,
    column: (value) => {
      const rounded = roundMove(value);
      if (rounded === 0) return "0";
      if (unit.divisor === 1) return formatMoney(rounded, "", true);
      const size = Math.abs(rounded) / unit.divisor;
      const decimals = Math.max(0, 1 - Math.floor(Math.log10(size) + 1e-9));
      return `${value < 0 ? "−" : "+"}${groupDigits(size, decimals)}`;
    },
    say: (value) => formatMoney(Math.abs(roundMove(value)), currency),
  };
}
