import { eachBlock } from "../../explain/paths/eachBlock.ts";
import type { Draw } from "../../explain/variants.ts";
import { rankOf } from "../../forecast/ranks.ts";
import type { Forecast } from "../../forecast/types.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { type Block, blockSize } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import { addMoney, newMoneySums, taskCost } from "../../simulate/money.ts";
import {
  type Appraisal,
  appraise,
  bytesOfAppraisal,
  newAppraisal,
  type WorthRows,
} from "../../simulate/worth.ts";
import type { Worth, WorthSpread } from "../types.ts";
import { returnRates } from "./returnRates.ts";

/**
 * Benefit against cost, beyond the net value and payback of the forecast: the ratio of benefits to cost, the rate of
 * return, and doing nothing. Also what a week's delay of every benefit loses.
 *
 * Cost: one run of the model, and some fifty sums of the monthly payments an iteration for the rate.
 */
export function worthOf(
  model: Model,
  asWritten: AsWritten,
  draw: Draw,
  appraisal: NonNullable<Forecast["appraisal"]>,
): { worth: Worth; benefitsPerWeek: number } {
  const n = draw.iterations;
  const now: WorthRows = { net: new Float64Array(n), payback: new Float64Array(n) };
  const later: WorthRows = { net: new Float64Array(n), payback: new Float64Array(n) };
  const rates = new Float64Array(n);
  const cost = new Float64Array(n);
  const spent = new Float64Array(n);
  const sums = new Float64Array(model.benefits.length);
  const size = Math.min(n, blockSize);
  let own: Appraisal | undefined;
  const visit = (block: Block, first: number) => {
    own ??= newAppraisal(model, block.kernel, size);
    if (own === undefined) return;
    markFinish(model, block);
    addMoney(model, block, newMoneySums(model));
    cost.set(block.cost.subarray(0, block.n), first);
    appraise(own, block, first, now, sums);
    appraise(own, aWeekLater(model, block), first, later, sums);
    returnRates(model, block, first, rates);
    addSpent(model, block, first, spent);
  };
  eachBlock(model, draw, asWritten.starts, visit, undefined, bytesOfAppraisal(model, size));
  const ratio = new Float64Array(n);
  let lost = 0;
  let better = 0;
  let net = 0;
  let sunk = 0;
  for (let k = 0; k < n; k++) {
    const c = cost[k] as number;
    const worth = now.net[k] as number;
    const gone = spent[k] as number;
    ratio[k] = c > 0 ? (worth + c) / c : Number.NaN;
    lost += worth - (later.net[k] as number);
    if (worth + gone > 0) better++;
    net += worth;
    sunk += gone;
  }
  const above = ratio.reduce((count, value) => count + (value > 1 ? 1 : 0), 0);
  const defined = ratio.reduce((count, value) => count + (Number.isNaN(value) ? 0 : 1), 0);
  const text = model.plan.decision?.doNothing;
  return {
    worth: {
      appraisal,
      benefitCost: { ...spreadOf(ratio), chanceAboveOne: defined === 0 ? 0 : above / defined },
      returnRate: spreadOf(rates),
      doNothing: {
        spent: sunk / n,
        goingOn: (net + sunk) / n,
        chanceBetter: better / n,
        ...(text === undefined ? {} : { text }),
      },
    },
    benefitsPerWeek: lost / n,
  };
}

/** Percentiles over the numbers of a row, infinities ranked and not told; NaN left out. */
function spreadOf(row: Float64Array): WorthSpread {
  const known = row.filter((value) => !Number.isNaN(value)).sort();
  const finite = known.reduce((count, value) => count + (Number.isFinite(value) ? 1 : 0), 0);
  const at = (p: number) => known[rankOf(p, known.length) - 1] ?? Number.NaN;
  const [p10, p50, p90] = [at(0.1), at(0.5), at(0.9)];
  return {
    chance: finite / row.length,
    ...(Number.isFinite(p10) ? { p10 } : {}),
    ...(Number.isFinite(p50) ? { p50 } : {}),
    ...(Number.isFinite(p90) ? { p90 } : {}),
  };
}

/** The block with everything benefits begin at a week later; what it costs is the same. */
function aWeekLater(model: Model, block: Block): Block {
  const shift = (row: Float64Array) => row.map((t) => t + 7);
  const finish = [...block.finish];
  for (const j of new Set(model.benefits.map(({ starts }) => starts)))
    if (j >= 0) finish[j] = shift(finish[j] as Float64Array);
  return { ...block, finish, planFinish: shift(block.planFinish) };
}

/** What finished tasks cost, and what started ones have spent. */
function addSpent(model: Model, block: Block, first: number, into: Float64Array): void {
  const { scratch: part, n } = block;
  model.tasks.forEach((task: ModelTask, j) => {
    const { progress } = task;
    if (progress === undefined) return;
    if (progress.finished) {
      if (taskCost(task, j, block, part))
        for (let k = 0; k < n; k++) into[first + k] = (into[first + k] as number) + (part[k] as number);
    } else if (progress.spent !== undefined)
      for (let k = 0; k < n; k++) into[first + k] = (into[first + k] as number) + progress.spent;
  });
}
