import { tolerance } from "../calendar/tolerance.ts";
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
  /** By benefit: sum over iterations of its discounted worth. */
  benefits: Float64Array;
}

/** Discount factors for one benefit, made once: `sums[k]` = sum of the first k payments of 1 a month, at b = 0. */
interface Payments {
  sums: Float64Array;
  most: number;
}

/**
 * Net value and payback of each iteration of the block, from its finish and its cost.
 *
 * A benefit begins at the finish b of its task (default the plan's); month k pays at b + k months, ramped up,
 * as long as `lasts`, `until` and the appraisal's years allow, discounted from day 0 (plan format, "Benefits").
 * Cost: one power per benefit and iteration.
 */
export function appraise(model: Model, block: Block, first: number, into: WorthRows): void {
  const { appraisal } = model.plan;
  if (appraisal === undefined) return;
  const horizon = appraisal.years * 365.25;
  const daily = power(1 + appraisal.discountRate, -1 / 365.25);
  const payments = model.benefits.map((benefit) =>
    paymentsOf(benefit, appraisal.discountRate, appraisal.years),
  );
  const { n } = block;
  const amounts = model.benefits.map((benefit) => {
    const row = new Float64Array(n);
    fillAmount(benefit.amount, block, row);
    return row;
  });
  const streams: { b: number; worth: number; last: number }[] = model.benefits.map(() => ({
    b: 0,
    worth: 0,
    last: 0,
  }));
  for (let k = 0; k < n; k++) {
    let net = -(block.cost[k] as number);
    model.benefits.forEach((benefit, i) => {
      const row = benefit.starts < 0 ? block.planFinish : (block.finish[benefit.starts] as Float64Array);
      const b = row[k] as number;
      const end = Math.min(horizon, benefit.untilDay) + tolerance;
      const worth = (amounts[i] as Float64Array)[k] as number;
      const stream = streams[i] as (typeof streams)[number];
      stream.b = b;
      stream.worth = worth * benefit.worth * power(daily, b);
      const { sums, most } = payments[i] as Payments;
      if (benefit.once) stream.last = b <= end ? 1 : 0;
      else stream.last = b > end ? 0 : Math.min(most, Math.floor((end - b) / month));
      const gained = stream.worth * (benefit.once ? stream.last : (sums[stream.last] as number));
      into.benefits[i] = (into.benefits[i] as number) + gained;
      net += gained;
    });
    into.net[first + k] = net;
    into.payback[first + k] = paybackOf(model.benefits, payments, streams, block.cost[k] as number);
  }
}

function paymentsOf(benefit: ModelBenefit, rate: number, years: number): Payments {
  const most = Math.floor(Math.min(benefit.lasts, years * 12) + tolerance);
  const sums = new Float64Array(most + 1);
  const monthly = power(1 + rate, -1 / 12);
  let factor = 1;
  for (let k = 1; k <= most; k++) {
    factor *= monthly;
    const part = benefit.ramp > 0 && k < benefit.ramp ? k / benefit.ramp : 1;
    sums[k] = (sums[k - 1] as number) + part * factor;
  }
  return { sums, most };
}

/** Walks the payments of all benefits in order of time until they have covered the cost. */
function paybackOf(
  benefits: readonly ModelBenefit[],
  payments: readonly Payments[],
  streams: readonly { b: number; worth: number; last: number }[],
  cost: number,
): number {
  const next = streams.map(() => 1);
  let gained = 0;
  if (gained >= cost) return 0;
  for (;;) {
    let best = -1;
    let when = Number.POSITIVE_INFINITY;
    for (let i = 0; i < streams.length; i++) {
      const stream = streams[i] as (typeof streams)[number];
      const k = next[i] as number;
      if (k > stream.last) continue;
      const t = benefits[i]?.once === true ? stream.b : stream.b + k * month;
      if (t < when) {
        when = t;
        best = i;
      }
    }
    if (best < 0) return Number.POSITIVE_INFINITY;
    const k = next[best] as number;
    const { sums } = payments[best] as Payments;
    const part = benefits[best]?.once === true ? 1 : (sums[k] as number) - (sums[k - 1] as number);
    gained += (streams[best]?.worth ?? 0) * part;
    next[best] = k + 1;
    if (gained >= cost) return when;
  }
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
