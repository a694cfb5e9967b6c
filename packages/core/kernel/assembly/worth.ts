import { exponentialAnywhere } from "./math";

// A stream of benefits is eight doubles, as packages/core/src/kernel/benefitWriter.ts writes them: 1 where it pays once,
// the amount's factor, the last moment that counts, how many payments there may be, and the addresses of its beginnings,
// worths, payments that count and sums of payments; and one for the payment that comes next.

const STREAM: usize = 72;
const MONTH: f64 = 365.25 / 12;

function row(stream: usize, field: usize): usize {
  return <usize>load<f64>(stream + (field << 3));
}

/** The moment of a payment of a stream in the iteration at byte `at` of its rows. */
function paidAt(stream: usize, at: usize, payment: f64): f64 {
  const begins = load<f64>(row(stream, 4) + at);
  return load<f64>(stream) !== 0 ? begins : begins + payment * MONTH;
}

/** Amounts become worths, discounted to day 0, and the payments that count are counted. */
function discount(stream: usize, daily: f64, n: usize): void {
  const once = load<f64>(stream) !== 0;
  const factor = load<f64>(stream, 8);
  const end = load<f64>(stream, 16);
  const most = load<f64>(stream, 24);
  const begins = row(stream, 4);
  const worth = row(stream, 5);
  const last = row(stream, 6);
  for (let at: usize = 0; at < n << 3; at += 8) {
    const b = load<f64>(begins + at);
    store<f64>(worth + at, load<f64>(worth + at) * factor * exponentialAnywhere(-daily * b));
    let payments: f64 = 0;
    if (b <= end) {
      const whole = Math.floor((end - b) / MONTH);
      payments = once ? 1 : whole < most ? whole : most;
    }
    store<f64>(last + at, payments);
  }
}

/** The moment by which payments, taken in order of time, have covered the cost. */
function paybackOf(streams: usize, end: usize, at: usize, cost: f64): f64 {
  for (let stream = streams; stream < end; stream += STREAM) store<f64>(stream, 1, 64);
  let gained: f64 = 0;
  let when: f64 = 0;
  while (gained < cost) {
    let best: usize = 0;
    when = Infinity;
    for (let stream = streams; stream < end; stream += STREAM) {
      const payment = load<f64>(stream, 64);
      if (payment > load<f64>(row(stream, 6) + at)) continue;
      const t = paidAt(stream, at, payment);
      if (t < when) {
        when = t;
        best = stream;
      }
    }
    if (best === 0) return Infinity;
    const payment = load<f64>(best, 64);
    const sums = row(best, 7) + ((<usize>payment) << 3);
    gained += load<f64>(row(best, 5) + at) * (load<f64>(sums) - load<f64>(sums - 8));
    store<f64>(best, payment + 1, 64);
  }
  return when;
}

/** One benefit of steady sign: the sums rise, so the first payment that covers the cost is found by halving. */
function paybackOfOne(stream: usize, at: usize, cost: f64): f64 {
  const worth = load<f64>(row(stream, 5) + at);
  const sums = row(stream, 7);
  let high = <u32>load<f64>(row(stream, 6) + at);
  if (worth <= 0 || worth * load<f64>(sums + ((<usize>high) << 3)) < cost) return Infinity;
  let low: u32 = 0;
  while (high > low + 1) {
    const middle = (low + high) >> 1;
    if (worth * load<f64>(sums + ((<usize>middle) << 3)) >= cost) high = middle;
    else low = middle;
  }
  return paidAt(stream, at, <f64>high);
}

/** Net value and payback of each iteration; the sums of what each stream gained go to `gained`. */
export function appraise(
  streams: usize,
  count: usize,
  daily: f64,
  cost: usize,
  net: usize,
  payback: usize,
  gained: usize,
  n: usize,
): void {
  const end = streams + count * STREAM;
  for (let stream = streams; stream < end; stream += STREAM) discount(stream, daily, n);
  for (let at: usize = 0; at < n << 3; at += 8) store<f64>(net + at, -load<f64>(cost + at));
  for (let stream = streams; stream < end; stream += STREAM) {
    const worth = row(stream, 5);
    const last = row(stream, 6);
    const sums = row(stream, 7);
    let sum: f64 = 0;
    for (let at: usize = 0; at < n << 3; at += 8) {
      const gain = load<f64>(worth + at) * load<f64>(sums + ((<usize>load<f64>(last + at)) << 3));
      store<f64>(net + at, load<f64>(net + at) + gain);
      sum += gain;
    }
    store<f64>(gained, sum);
    gained += 8;
  }
  for (let at: usize = 0; at < n << 3; at += 8) {
    const c = load<f64>(cost + at);
    let when: f64 = 0;
    if (c > 0) when = count === 1 ? paybackOfOne(streams, at, c) : paybackOf(streams, end, at, c);
    store<f64>(payback + at, when);
  }
}
