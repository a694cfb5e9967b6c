import { tolerance } from "../../calendar/tolerance.ts";
import type { Ledger } from "../ledger.ts";

/** Books amounts to the months their moments fall in. */
export function bookByMonth(ledger: Ledger, moments: Float64Array, amounts: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) addTo(ledger, monthOf(ledger, moments[k] as number), k, amounts[k] as number);
}

/** The first month that does not end before t; the last takes the rest. Months end with days, so the day decides. */
export function monthOf({ byDay, ends }: Ledger, t: number): number {
  const day = Math.ceil(t - tolerance);
  if (day <= 0) return 0;
  return day < byDay.length ? (byDay[day] as number) : ends.length - 1;
}

export function addTo({ booked, stride }: Ledger, month: number, k: number, amount: number): void {
  const at = month * stride + k;
  booked[at] = (booked[at] as number) + amount;
}
