import { discountFactor } from "./discount.ts";

/** Money at a time: positive comes in, negative goes out. */
export interface Flow {
  /** Years from the start. */
  years: number;
  amount: number;
}

/** Yearly amounts as flows: the first now, the next at the end of year 1, and so on. */
export function yearly(amounts: readonly number[]): Flow[] {
  return amounts.map((amount, years) => ({ years, amount }));
}

/** Net present value: all flows discounted to the start (HM Treasury, The Green Book, ch. 5). */
export function netValue(flows: readonly Flow[], rate: number): number {
  return flows.reduce((sum, { years, amount }) => sum + amount * discountFactor(rate, years), 0);
}

/**
 * When the flows, summed in order of time, first come back to nought: years from the start, between two flows in
 * proportion to what is still missing, as if a flow came evenly over the time since the one before. 0 where nothing has
 * to be paid back, undefined where it never is.
 *
 * @param rate  With a rate: the discounted payback. Default 0.
 */
export function payback(flows: readonly Flow[], rate = 0): number | undefined {
  let sum = 0;
  let before = 0;
  for (const { years, amount } of [...flows].sort((a, b) => a.years - b.years)) {
    const worth = amount * discountFactor(rate, years);
    if (sum < 0 && sum + worth >= 0) return before + ((years - before) * -sum) / worth;
    sum += worth;
    before = years;
  }
  return sum >= 0 ? 0 : undefined;
}
