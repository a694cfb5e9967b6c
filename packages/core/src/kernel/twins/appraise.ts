import { exponential } from "../../sampling/math/exponential.ts";
import type { BenefitStream } from "../benefitStream.ts";

const month = 365.25 / 12;

/** Net value and payback of each iteration; answers the sums of what each stream gained into `gained`. */
export function appraise(
  streams: readonly BenefitStream[],
  daily: number,
  cost: Float64Array,
  net: Float64Array,
  payback: Float64Array,
  gained: Float64Array,
  n: number,
): void {
  for (const stream of streams) discount(stream, daily, n);
  for (let k = 0; k < n; k++) net[k] = -(cost[k] as number);
  streams.forEach(({ worth, last, sums }, i) => {
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const gain = (worth[k] as number) * (sums[last[k] as number] as number);
      net[k] = (net[k] as number) + gain;
      sum += gain;
    }
    gained[i] = sum;
  });
  for (let k = 0; k < n; k++) payback[k] = paybackOf(streams, k, cost[k] as number);
}

/** Amounts become worths, discounted to day 0, and the payments that count are counted. */
function discount(
  { once, factor, end, begins, worth, last, sums }: BenefitStream,
  daily: number,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const b = begins[k] as number;
    worth[k] = (worth[k] as number) * factor * exponential(-daily * b);
    const whole = Math.floor((end - b) / month);
    last[k] = b > end ? 0 : once ? 1 : Math.min(sums.length - 1, whole);
  }
}

/** The moment by which payments, taken in order of time, have covered the cost. */
function paybackOf(streams: readonly BenefitStream[], k: number, cost: number): number {
  if (cost <= 0) return 0;
  if (streams.length === 1) return paybackOfOne(streams[0] as BenefitStream, k, cost);
  const next = new Int32Array(streams.length).fill(1);
  let gained = 0;
  for (;;) {
    let best = -1;
    let when = Number.POSITIVE_INFINITY;
    for (let i = 0; i < streams.length; i++) {
      const stream = streams[i] as BenefitStream;
      const payment = next[i] as number;
      if (payment > (stream.last[k] as number)) continue;
      const t = paidAt(stream, k, payment);
      if (t < when) {
        when = t;
        best = i;
      }
    }
    if (best < 0) return Number.POSITIVE_INFINITY;
    const stream = streams[best] as BenefitStream;
    const payment = next[best] as number;
    gained +=
      (stream.worth[k] as number) * ((stream.sums[payment] as number) - (stream.sums[payment - 1] as number));
    next[best] = payment + 1;
    if (gained >= cost) return when;
  }
}

/** One benefit of steady sign: the sums rise, so the first payment that covers the cost is found by halving. */
function paybackOfOne(stream: BenefitStream, k: number, cost: number): number {
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

function paidAt(stream: BenefitStream, k: number, payment: number): number {
  const b = stream.begins[k] as number;
  return stream.once ? b : b + payment * month;
}
