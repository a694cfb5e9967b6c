import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { latenessRates } from "../../explain/confidence/latenessRates.ts";
import type { Draw } from "../../explain/variants.ts";
import type { Model } from "../../simulate/model.ts";
import type { Trials } from "../../simulate/trials.ts";
import type { DelayCost } from "../types.ts";

/** What the plan prices lateness with, and what it is expected to come to; undefined where it prices none. */
export function delayCost(model: Model, trials: Trials, draw: Draw): DelayCost["lateness"] {
  const rates = latenessRates(model, draw);
  const costs = trials.lateness;
  if (rates === undefined || costs === undefined || model.lateness === undefined) return undefined;
  const n = draw.iterations;
  const end = model.lateness.afterDay + 1;
  let late = 0;
  let weeks = 0;
  for (let k = 0; k < n; k++) {
    const over = (trials.finish[k] as number) - end;
    if (over <= tolerance) continue;
    late++;
    weeks += over / 7;
  }
  return {
    after: isoDate(model.startDay + model.lateness.afterDay),
    perWeek: meanOf(rates.perWeek),
    once: meanOf(rates.once),
    chanceLate: late / n,
    weeksLate: weeks / n,
    expected: meanOf(costs),
  };
}

function meanOf(row: Float64Array): number {
  let sum = 0;
  for (const value of row) sum += value;
  return sum / row.length;
}
