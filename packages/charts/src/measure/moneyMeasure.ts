import { formatMoney } from "../words/formatMoney.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { roundToStep } from "../words/roundToLimits.ts";
import type { Measure } from "./types.ts";

/**
 * Money, all on the same place: the one that gives the largest amount three digits, so that the figures shown
 * add up as nearly as they can; nothing finer than a hundredth.
 *
 * @param amounts  Everything that will stand in the column.
 */
export function moneyMeasure(amounts: readonly number[], currency: string): Measure {
  let largest = 0;
  for (const amount of amounts) if (Number.isFinite(amount)) largest = Math.max(largest, Math.abs(amount));
  const step = largest > 0 ? Math.max(0.01, 10 ** (Math.floor(Math.log10(largest)) - 2)) : 1;
  return {
    amount: (effect) => effect.money,
    what: "sum",
    unit: currency,
    less: "cheaper",
    more: "dearer",
    least: step / 2,
    column: (value) => formatMoney(roundToStep(value, step), "", true),
    // A sentence names one amount: two digits say its size.
    say: (value) => {
      const size = Math.abs(value);
      return formatMoney(
        size < step / 2 ? 0 : roundSignificant(size, size >= largest / 10 ? 3 : 2),
        currency,
      );
    },
  };
}
