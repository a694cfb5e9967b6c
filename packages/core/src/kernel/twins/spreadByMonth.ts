import { tolerance } from "../../calendar/tolerance.ts";
import { type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";
import type { Ledger } from "../ledger.ts";
import { addTo, monthOf } from "./bookByMonth.ts";

/**
 * Books amounts evenly over the work in [start, finish]: each in all ("whole"; at the finish where there is no work),
 * or for each day of work ("daily").
 */
export function spreadByMonth(
  calendar: WorkCalendar,
  ledger: Ledger,
  start: Float64Array,
  finish: Float64Array,
  amounts: Float64Array,
  per: "whole" | "daily",
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const amount = amounts[k] as number;
    const [s, f] = [start[k] as number, finish[k] as number];
    if (per === "daily") spread(calendar, ledger, s, f, k, amount);
    else if (amount !== 0) {
      const all = f - s <= tolerance ? 0 : workAt(calendar, f) - workAt(calendar, s);
      if (all <= tolerance) addTo(ledger, monthOf(ledger, f), k, amount);
      else spread(calendar, ledger, s, f, k, amount / all);
    }
  }
}

/** `rate` for each day of work in [s, f], to the months the days fall in. */
function spread(calendar: WorkCalendar, ledger: Ledger, s: number, f: number, k: number, rate: number): void {
  const { ends } = ledger;
  const last = ends.length - 1;
  let done = workAt(calendar, s);
  for (let m = monthOf(ledger, s); m <= last; m++) {
    const end = m < last && (ends[m] as number) < f ? (ends[m] as number) : f;
    const upTo = workAt(calendar, end);
    if (upTo > done) {
      addTo(ledger, m, k, rate * (upTo - done));
      done = upTo;
    }
    if (end >= f) return;
  }
}
