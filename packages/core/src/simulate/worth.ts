import { tolerance } from "../calendar/tolerance.ts";
import { exponential } from "../sampling/math/exponential.ts";
import { logarithm } from "../sampling/math/logarithm.ts";
import { power } from "../sampling/math/power.ts";
import type { Block } from "./block.ts";
import type { Model, ModelBenefit } from "./model.ts";
import { fillAmount } from "./money.ts";

const month = 365.25 / 12;

/** Benefits of a plan that says over how many years and at which rate it is appraised. */
export interface WorthRows {
  /** Length n: benefits discounted, less the total cost (not discounted). */
  net: Float64Array;
  /** Length n: the moment by which discounted benefits have covered the cost; infinite if they never do. */
  payback: Float64Array;
}

/** One benefit over a block: when it begins, its first monthly amount discounted to then, how many payments count. */
interface Stream {
  once: boolean;
  begins: Float64Array;
  worth: Float64Array;
  last: Int32Array;
  /** `sums[k]`: the first k payments of 1 a month, ramped and discounted from the benefit's beginning. */
  sums: Float64Array;
}

/**
 * Net value and payback of each iteration of the block, from its finish and its cost.
 *
 * A benefit begins at b, the finish of its task (default the plan's) and its `lag` later; month k pays at b + k months, ramped up,
 * as long as `lasts`, `until` and the appraisal's years allow, discounted from day 0 (plan format, "Benefits").
 * `benefitSums`: by benefit, the sum of its discounted worth over the block.
 * Cost: one power per benefit and iteration.
 */
export function appraise(
  model: Model,
  block: Block,
  first: number,
  into: WorthRows,
  benefitSums: Float64Array,
): void {
  const { appraisal } = model.plan;
  if (appraisal === undefined) return;
  const { n } = block;
  const horizon = appraisal.years * 365.25;
  const daily = logarithm(1 + appraisal.discountRate) / 365.25;
  const valued = model.benefits.filter((benefit) => benefit.worth !== 0);
  const streams = valued.map((benefit): Stream => {
    const payments = paymentsOf(benefit, appraisal.discountRate, appraisal.years);
    const begins = beginsOf(benefit, block);
    const worth = new Float64Array(n);
    const last = new Int32Array(n);
    fillAmount(benefit.amount, block, worth);
    const end = Math.min(horizon, benefit.untilDay) + tolerance;
    for (let k = 0; k < n; k++) {
      const b = begins[k] as number;
      worth[k] = (worth[k] as number) * benefit.worth * exponential(-daily * b);
      const whole = Math.floor((end - b) / month);
      last[k] = b > end ? 0 : benefit.once ? 1 : Math.min(payments.length - 1, whole);
    }
    return { once: benefit.once, begins, worth, last, sums: payments };
  });
  for (let k = 0; k < n; k++) into.net[first + k] = -(block.cost[k] as number);
  streams.forEach((stream, i) => {
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const gained = (stream.worth[k] as number) * (stream.sums[stream.last[k] as number] as number);
      into.net[first + k] = (into.net[first + k] as number) + gained;
      sum += gained;
    }
    const at = model.benefits.indexOf(valued[i] as ModelBenefit);
    benefitSums[at] = sum;
  });
  for (let k = 0; k < n; k++) into.payback[first + k] = paybackOf(streams, k, block.cost[k] as number);
}

/** When a benefit begins in each iteration, length n: the finish it hangs on, and its own lag after that. */
export function beginsOf({ starts, lag }: ModelBenefit, block: Block): Float64Array {
  const finish = starts < 0 ? block.planFinish : (block.finish[starts] as Float64Array);
  return lag === 0 ? finish : finish.map((moment) => moment + lag);
}

function paymentsOf(benefit: ModelBenefit, rate: number, years: number): Float64Array {
  if (benefit.once) return Float64Array.of(0, 1);
  const most = Math.floor(Math.min(benefit.lasts, years * 12) + tolerance);
  const sums = new Float64Array(most + 1);
  const monthly = power(1 + rate, -1 / 12);
  let factor = 1;
  for (let k = 1; k <= most; k++) {
    factor *= monthly;
    const part = benefit.ramp > 0 && k < benefit.ramp ? k / benefit.ramp : 1;
    sums[k] = (sums[k - 1] as number) + part * factor;
  }
  return sums;
}

/** The moment by which payments, taken in order of time, have covered the cost. */
function paybackOf(streams: readonly Stream[], k: number, cost: number): number {
  if (cost <= 0) return 0;
  if (streams.length === 1) return paybackOfOne(streams[0] as Stream, k, cost);
  const next = new Int32Array(streams.length).fill(1);
  let gained = 0;
  for (;;) {
    let best = -1;
    let when = Number.POSITIVE_INFINITY;
    for (let i = 0; i < streams.length; i++) {
      const stream = streams[i] as Stream;
      const payment = next[i] as number;
      if (payment > (stream.last[k] as number)) continue;
      const t = paidAt(stream, k, payment);
      if (t < when) {
        when = t;
        best = i;
      }
    }
    if (best < 0) return Number.POSITIVE_INFINITY;
    const stream = streams[best] as Stream;
    const payment = next[best] as number;
    gained +=
      (stream.worth[k] as number) * ((stream.sums[payment] as number) - (stream.sums[payment - 1] as number));
    next[best] = payment + 1;
    if (gained >= cost) return when;
  }
}

/** One benefit of steady sign: the sums rise, so the first payment that covers the cost is found by halving. */
function paybackOfOne(stream: Stream, k: number, cost: number): number {
  const worth = stream.worth[k] as number;
  let high = stream.last[k] as number;
  if (worth <= 0 || worth * (stream.sums[high] as number) < cost) return Number.POSITIVE_INFINITY;
  let low = 0;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (worth * (stream.sums[middle] as number) >= cost) high = middle;
    else low = middle;
  }
  return paidAt(stream, k, high);
}

function paidAt(stream: Stream, k: number, payment: number): number {
  const b = stream.begins[k] as number;
  return stream.once ? b : b + payment * month;
}

/** Lateness of each iteration: weeks past the end of day `after` times `perWeek`, plus `once` when late at all. */
export function lateCost(model: Model, block: Block, first: number, into: Float64Array): void {
  const { lateness } = model;
  if (lateness === undefined) return;
  const { n, scratch: perWeek, scratch2: once } = block;
  fillAmount(lateness.perWeek, block, perWeek);
  fillAmount(lateness.once, block, once);
  for (let k = 0; k < n; k++) {
    const late = (block.planFinish[k] as number) - (lateness.afterDay + 1);
    into[first + k] = late > tolerance ? (late / 7) * (perWeek[k] as number) + (once[k] as number) : 0;
  }
}
