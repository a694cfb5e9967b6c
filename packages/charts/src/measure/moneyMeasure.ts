import { formatMoney } from "../words/formatMoney.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { moneyColumn } from "./moneyColumn.ts";
import type { Measure } from "./types.ts";

/**
 * Money, all on the same place, so that the figures shown add up as nearly as they can.
 *
 * @param amounts  Everything that will stand in the column.
 */
export function moneyMeasure(amounts: readonly number[], currency: string): Measure {
  const { unit, step, text } = moneyColumn(amounts, currency);
  return {
    amount: (effect) => effect.money,
    what: "sum",
    unit,
    currency,
    less: "cheaper",
    more: "dearer",
    least: step / 2,
    column: (value) => text(value, true),
    // A sentence names one amount: two digits say its size, three where it is one of the largest.
    say: (value) => {
      const size = Math.abs(value);
      return formatMoney(size < step / 2 ? 0 : roundSignificant(size, size >= step * 10 ? 3 : 2), currency);
    },
  };
}
