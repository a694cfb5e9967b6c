import { type Flow, netValue } from "./netValue.ts";

const lowest = -0.99;
const highest = 100;

/**
 * The rate at which a falling function of the rate is nought, between -99 % and 10,000 % a year; undefined where it does
 * not change sign between them. Bisection after the sign is bracketed: to 1e-12, 50 calls or so, and no surprises.
 */
export function rateWhereNought(value: (rate: number) => number): number | undefined {
  let low = 0;
  let high = 0.1;
  if (value(low) < 0) {
    high = 0;
    low = lowest;
    if (value(low) < 0) return undefined;
  } else {
    while (value(high) > 0) {
      if (high >= highest) return undefined;
      low = high;
      high = Math.min(highest, high * 4);
    }
  }
  while (high - low > 1e-12 * Math.max(1, Math.abs(high))) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (value(middle) >= 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The internal rate of return: the yearly rate at which the net value of the flows is nought.
 *
 * Defined where there is one such rate: money goes out first, and the flows change sign once (Descartes), or what has
 * come in so far does and ends above nought (Norstrom, "A sufficient condition for a unique nonnegative internal rate
 * of return", 1972; recalled). Undefined for all others: several rates, or none, would answer.
 */
export function returnRate(flows: readonly Flow[]): number | undefined {
  const ordered = flows.filter(({ amount }) => amount !== 0).sort((a, b) => a.years - b.years);
  if ((ordered[0]?.amount ?? 0) >= 0) return undefined;
  let sum = 0;
  const sums = ordered.map(({ amount }) => {
    sum += amount;
    return sum;
  });
  const once = changes(ordered.map(({ amount }) => amount)) === 1;
  if (!once && !(changes(sums) === 1 && sum > 0)) return undefined;
  return rateWhereNought((rate) => netValue(ordered, rate));
}

function changes(values: readonly number[]): number {
  const signs = values.filter((value) => value !== 0).map(Math.sign);
  return signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
}
