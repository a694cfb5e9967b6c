import { tolerance } from "../../calendar/tolerance.ts";
import { power } from "../../sampling/math/power.ts";
import type { Block } from "../../simulate/block.ts";
import type { Model, ModelBenefit } from "../../simulate/model.ts";
import { fillAmount } from "../../simulate/money.ts";
import { beginsOf } from "../../simulate/worth.ts";
import { rateWhereNought } from "./returnRate.ts";

const month = 365.25 / 12;

interface Stream {
  once: boolean;
  ramp: number;
  begins: Float64Array;
  worth: Float64Array;
  /** Payments that count. */
  last: Int32Array;
}

/**
 * In each iteration of a block, the yearly rate at which the net value would be nought: benefits as the plan format
 * times them (`appraise`), discounted at that rate, are worth the total cost, which counts at the start. Minus infinity
 * where the benefits never make up for the cost at any rate above -99 %, infinity where there is nothing to make up for.
 *
 * Only with benefits that are never negative is there one such rate; otherwise NaN.
 */
export function returnRates(model: Model, block: Block, first: number, into: Float64Array): void {
  const { appraisal } = model.plan;
  if (appraisal === undefined) return;
  const horizon = appraisal.years * 365.25;
  const streams = model.benefits
    .filter(({ worth }) => worth !== 0)
    .map((benefit) => streamOf(benefit, block, horizon));
  for (let k = 0; k < block.n; k++) into[first + k] = rateOf(streams, k, block.cost[k] as number);
}

function streamOf(benefit: ModelBenefit, block: Block, horizon: number): Stream {
  const { n } = block;
  const begins = beginsOf(benefit, block);
  const worth = new Float64Array(n);
  const last = new Int32Array(n);
  fillAmount(benefit.amount, block, worth);
  const end = Math.min(horizon, benefit.untilDay) + tolerance;
  const most = Math.floor(Math.min(benefit.lasts, horizon / month) + tolerance);
  for (let k = 0; k < n; k++) {
    const b = begins[k] as number;
    worth[k] = (worth[k] as number) * benefit.worth;
    last[k] = b > end ? 0 : benefit.once ? 1 : Math.min(most, Math.floor((end - b) / month));
  }
  return { once: benefit.once, ramp: benefit.ramp, begins, worth, last };
}

function rateOf(streams: readonly Stream[], k: number, cost: number): number {
  if (streams.some(({ worth }) => (worth[k] as number) < 0)) return Number.NaN;
  if (cost <= 0) return Number.POSITIVE_INFINITY;
  return rateWhereNought((rate) => benefitsAt(streams, k, rate) - cost) ?? Number.NEGATIVE_INFINITY;
}

function benefitsAt(streams: readonly Stream[], k: number, rate: number): number {
  const monthly = power(1 + rate, -1 / 12);
  let sum = 0;
  for (const { once, ramp, begins, worth, last } of streams) {
    const payments = last[k] as number;
    if (payments === 0) continue;
    let series = 0;
    // From the last payment to the first: each is a month nearer.
    if (once) series = 1;
    else
      for (let i = payments; i >= 1; i--) series = (series + (ramp > 0 && i < ramp ? i / ramp : 1)) * monthly;
    sum += (worth[k] as number) * power(1 + rate, -(begins[k] as number) / 365.25) * series;
  }
  return sum;
}
