import { moneyUnit } from "../axes/roundTicks.ts";
import { groupDigits } from "../words/groupDigits.ts";
import { roundToStep } from "../words/roundToLimits.ts";

export interface MoneyColumn {
  /** What the figures are counted in: the currency, its millions or billions. */
  unit: string;
  /** The place all figures end on, in money. */
  step: number;
  text: (value: number, signed?: boolean) => string;
}

/**
 * Money for a column of figures: all in one unit, all on the same place, the one that gives the largest three
 * digits; nothing finer than a hundredth.
 */
export function moneyColumn(amounts: readonly number[], currency: string): MoneyColumn {
  let largest = 0;
  for (const amount of amounts) if (Number.isFinite(amount)) largest = Math.max(largest, Math.abs(amount));
  const unit = moneyUnit(largest, currency);
  const step = largest > 0 ? Math.max(0.01, 10 ** (Math.floor(Math.log10(largest)) - 2)) : 1;
  const decimals = Math.max(0, -Math.floor(Math.log10(step / unit.divisor) + 1e-9));
  return {
    unit: unit.name,
    step,
    text: (value, signed = false) => {
      const digits = groupDigits(Math.abs(roundToStep(value, step)) / unit.divisor, decimals);
      if (!/[1-9]/.test(digits)) return "0";
      return `${value < 0 ? "−" : signed ? "+" : ""}${digits}`;
    },
  };
}
