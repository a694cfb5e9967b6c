import { formatMoney } from "../words/formatMoney.ts";

/** A sum stated in the plan, not sampled: to the unit. */
export function statedSum(value: number, currency: string): string {
  return formatMoney(Math.round(value), currency);
}
