import { groupDigits } from "../words/groupDigits.ts";

/** Nought and every round step (1, 2 or 5 times a power of ten) from `from` to `to`: at most `most` or so. */
export function roundTicks(from: number, to: number, most: number): number[] {
  const span = to - from;
  if (!(span > 0) || !Number.isFinite(span)) return Number.isFinite(from) ? [from] : [];
  const rough = span / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((each) => each * power >= rough * 0.999) ?? 10) * power;
  const ticks: number[] = [];
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  // Counted in steps: adding the step up would gather rounding errors.
  for (let k = first; k <= last && ticks.length < 100; k++) ticks.push(k * step);
  return ticks;
}

/** The unit sums are written in on an axis: the currency, in millions or billions where sums are long. */
export function moneyUnit(largest: number, currency: string): { divisor: number; name: string } {
  const size = Math.abs(largest);
  if (size >= 1e10) return { divisor: 1e9, name: `${currency} billion` };
  if (size >= 1e7) return { divisor: 1e6, name: `${currency} million` };
  return { divisor: 1, name: currency };
}

/** Tick labels with just the decimals the step needs. */
export function tickLabels(ticks: readonly number[], divisor = 1): string[] {
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0)) / divisor;
  const decimals = step > 0 ? Math.max(0, Math.min(10, -Math.floor(Math.log10(step) + 1e-9))) : 0;
  return ticks.map((tick) => groupDigits(tick / divisor, decimals));
}
