import { isoDate } from "../../calendar/dates.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import { limitRanks, rankOf } from "../../forecast/ranks.ts";
import { blockSize } from "../../simulate/block.ts";
import type { Model } from "../../simulate/model.ts";
import type { ConfidenceStep } from "../types.ts";
import type { Outcome } from "../variants.ts";
import { latenessLeft } from "./latenessLeft.ts";
import type { LatenessRates } from "./latenessRates.ts";

type Rows = Omit<Outcome, "lateness">;

/**
 * The levels side by side, ascending: date and sum with their limits, what each step up from the level before buys
 * in days and holds in money, what is left to go wrong beyond it, and, when lateness is priced, what of its expected
 * cost the step avoids.
 *
 * A step's cost is the extra money held and nothing else: time has no price here but the lateness it avoids. The
 * standard error of a step's net comes from the blocks of 1,024 iterations, which are independent runs.
 *
 * @param levels  Above 0 and below 1, ascending, no two equal.
 *
 * Cost: sorts of n, and 3 n steps a level.
 */
export function confidenceSteps(
  model: Model,
  rows: Rows,
  levels: readonly number[],
  rates: LatenessRates | undefined,
): ConfidenceStep[] {
  const n = rows.finish.length;
  const finishes = rows.finish.slice().sort();
  const days = rows.finishDay.slice().sort();
  const costs = rows.cost.slice().sort();
  const errors = rates === undefined ? undefined : netErrors(rows, levels, rates);
  const dateAt = (rank: number) => isoDate(model.startDay + (days[rank - 1] as number));
  const steps: ConfidenceStep[] = [];
  levels.forEach((p, l) => {
    const rank = rankOf(p, n);
    const limits = limitRanks(p, n);
    const day = finishes[rank - 1] as number;
    const lastDay = days[rank - 1] as number;
    const cost = costs[rank - 1] as number;
    const left = rates === undefined ? undefined : latenessLeft(rows.finish, rates, lastDay + 1);
    const workingDays = workAt(model.planCalendar, day);
    const before = steps[l - 1];
    const bought =
      before === undefined
        ? undefined
        : { workingDays: workingDays - before.workingDays, money: cost - before.cost };
    const avoided =
      left === undefined || before?.latenessLeft === undefined ? undefined : before.latenessLeft - left;
    const netError = errors?.[l];
    steps.push({
      p,
      date: dateAt(rank),
      day,
      workingDays,
      cost,
      lowDate: dateAt(limits.low),
      highDate: dateAt(limits.high),
      costLow: costs[limits.low - 1] as number,
      costHigh: costs[limits.high - 1] as number,
      ...(bought === undefined ? {} : { bought }),
      late: lateBeyond(rows, lastDay),
      over: overBeyond(costs, cost),
      ...(left === undefined ? {} : { latenessLeft: left }),
      ...(avoided === undefined || bought === undefined
        ? {}
        : {
            avoided,
            ...(netError === undefined ? {} : { netError }),
            worthIt: avoided > bought.money,
          }),
    });
  });
  return steps;
}

function lateBeyond({ finish, finishDay }: Rows, day: number): ConfidenceStep["late"] {
  let count = 0;
  let sum = 0;
  for (let k = 0; k < finish.length; k++) {
    if ((finishDay[k] as number) <= day) continue;
    count++;
    sum += (finish[k] as number) - (day + 1);
  }
  return { chance: count / finish.length, days: count === 0 ? 0 : sum / count };
}

function overBeyond(sorted: Float64Array, cost: number): ConfidenceStep["over"] {
  let count = 0;
  let sum = 0;
  for (let k = sorted.length - 1; k >= 0 && (sorted[k] as number) > cost; k--) {
    count++;
    sum += (sorted[k] as number) - cost;
  }
  return { chance: count / sorted.length, money: count === 0 ? 0 : sum / count };
}

/**
 * Standard error of avoided less held, by level (the step into it; none for the first): the spread of the same figure
 * over whole blocks, divided by the root of their number. undefined with fewer than two whole blocks.
 */
function netErrors(rows: Rows, levels: readonly number[], rates: LatenessRates): (number | undefined)[] {
  const blocks = Math.floor(rows.finish.length / blockSize);
  if (blocks < 2) return [];
  const nets = levels.map(() => new Float64Array(blocks));
  for (let b = 0; b < blocks; b++) {
    const [from, to] = [b * blockSize, (b + 1) * blockSize];
    const days = rows.finishDay.slice(from, to).sort();
    const costs = rows.cost.slice(from, to).sort();
    let total = 0;
    levels.forEach((p, l) => {
      const rank = rankOf(p, blockSize) - 1;
      const left = latenessLeft(rows.finish, rates, (days[rank] as number) + 1, from, to);
      const outlay = left + (costs[rank] as number);
      (nets[l] as Float64Array)[b] = total - outlay;
      total = outlay;
    });
  }
  return nets.map((net, l) => (l === 0 ? undefined : standardError(net)));
}

function standardError(values: Float64Array): number {
  const n = values.length;
  let mean = 0;
  for (const value of values) mean += value / n;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  return Math.sqrt(squares / (n - 1) / n);
}
