import { power } from "../../sampling/math/power.ts";

/**
 * What 1 at the end of `years` is worth today: (1 + rate)^-years. Year 0 is not discounted.
 *
 * Source: HM Treasury, The Green Book, Annex A6.
 *
 * @param rate  Per year, above -1.
 */
export function discountFactor(rate: number, years: number): number {
  return power(1 + rate, -years);
}

/** The factor for money that comes evenly over year `year` (1, 2, ...), counted at its middle: (1 + rate)^-(year - 0.5). */
export function midYearFactor(rate: number, year: number): number {
  return discountFactor(rate, year - 0.5);
}

/**
 * An amount `years` on at a yearly escalation: amount (1 + escalation)^years.
 *
 * Source: NASA Cost Estimating Handbook v4.0 (2015), 4.5-4.6.
 */
export function escalated(amount: number, escalation: number, years: number): number {
  return amount * power(1 + escalation, years);
}

/**
 * The nominal rate that goes with a real one: (1 + real)(1 + inflation) - 1 (Fisher). Real rates discount money without
 * inflation, nominal rates money with it; mixing them is the commonest mistake.
 */
export function nominalRate(real: number, inflation: number): number {
  return (1 + real) * (1 + inflation) - 1;
}
