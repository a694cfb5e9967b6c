import { tolerance } from "../calendar/tolerance.ts";
import { type BenefitStream, bytesOfRows, bytesOfStreams, type Kernel } from "../kernel/index.ts";
import { logarithm } from "../sampling/math/logarithm.ts";
import { power } from "../sampling/math/power.ts";
import type { Block } from "./block.ts";
import type { Model, ModelBenefit } from "./model.ts";
import { fillAmount } from "./money.ts";

/** Benefits of a plan that says over how many years and at which rate it is appraised. */
export interface WorthRows {
  /** Length n: benefits discounted, less the total cost (not discounted). */
  net: Float64Array;
  /** Length n: the moment by which discounted benefits have covered the cost; infinite if they never do. */
  payback: Float64Array;
}

/** Rows of a kernel in which a model's benefits are appraised, block by block. */
export interface Appraisal {
  streams: { at: number; benefit: ModelBenefit; stream: BenefitStream }[];
  daily: number;
  net: Float64Array;
  payback: Float64Array;
  gained: Float64Array;
}

/** Rows for blocks of up to `size` iterations; undefined where the plan says nothing of years and rate. */
export function newAppraisal(model: Model, { arena }: Kernel, size: number): Appraisal | undefined {
  const { appraisal } = model.plan;
  if (appraisal === undefined) return undefined;
  const { discountRate, years } = appraisal;
  const horizon = years * 365.25;
  const row = (length: number) => arena.rows(1, length)[0] as Float64Array;
  const streams = model.benefits.flatMap((benefit, at) => {
    if (benefit.worth === 0) return [];
    const payments = paymentsOf(benefit, discountRate, years);
    const sums = row(payments.length);
    sums.set(payments);
    const stream: BenefitStream = {
      once: benefit.once,
      factor: benefit.worth,
      end: Math.min(horizon, benefit.untilDay) + tolerance,
      begins: row(size),
      worth: row(size),
      last: row(size),
      sums,
    };
    return [{ at, benefit, stream }];
  });
  return {
    streams,
    daily: logarithm(1 + discountRate) / 365.25,
    net: row(size),
    payback: row(size),
    gained: new Float64Array(streams.length),
  };
}

/** Bytes that it takes in a kernel. */
export function bytesOfAppraisal(model: Model, size: number): number {
  const { appraisal } = model.plan;
  if (appraisal === undefined) return 0;
  let bytes = bytesOfRows(2, size, 8) + bytesOfStreams(model.benefits.length);
  for (const benefit of model.benefits) {
    bytes += bytesOfRows(3, size, 8) + bytesOfRows(1, mostPayments(benefit, appraisal.years) + 1, 8);
  }
  return bytes;
}

/**
 * Net value and payback of each iteration of the block, from its finish and its cost.
 *
 * A benefit begins at b, the finish of its task (default the plan's) and its `lag` later; month k pays at b + k months, ramped up,
 * as long as `lasts`, `until` and the appraisal's years allow, discounted from day 0 (plan format, "Benefits").
 * `benefitSums`: by benefit, the sum of its discounted worth over the block.
 *
 * @param own  Of the block's kernel (`newAppraisal`).
 *
 * Cost: one power per benefit and iteration.
 */
export function appraise(
  own: Appraisal,
  block: Block,
  first: number,
  into: WorthRows,
  benefitSums: Float64Array,
): void {
  const { n, kernel, cost } = block;
  const { streams, daily, net, payback, gained } = own;
  for (const { benefit, stream } of streams) {
    fillAmount(benefit.amount, block, stream.worth);
    stream.begins.set(beginsOf(benefit, block).subarray(0, n));
  }
  const list = streams.map(({ stream }) => stream);
  kernel.appraise(list, daily, cost, net, payback, gained, n);
  into.net.set(net.subarray(0, n), first);
  into.payback.set(payback.subarray(0, n), first);
  streams.forEach(({ at }, i) => {
    benefitSums[at] = gained[i] as number;
  });
}

/** When a benefit begins in each iteration, length n: the finish it hangs on, and its own lag after that. */
export function beginsOf({ starts, lag }: ModelBenefit, block: Block): Float64Array {
  const finish = starts < 0 ? block.planFinish : (block.finish[starts] as Float64Array);
  return lag === 0 ? finish : finish.map((moment) => moment + lag);
}

/** How many payments a benefit may make within the years of the appraisal. */
function mostPayments(benefit: ModelBenefit, years: number): number {
  return benefit.once ? 1 : Math.floor(Math.min(benefit.lasts, years * 12) + tolerance);
}

function paymentsOf(benefit: ModelBenefit, rate: number, years: number): Float64Array {
  if (benefit.once) return Float64Array.of(0, 1);
  const most = mostPayments(benefit, years);
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
