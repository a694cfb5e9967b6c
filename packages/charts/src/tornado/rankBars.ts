import type { TornadoBar, TornadoSide } from "@leeway/core";

/** How far a bar reaches, the committed value (no change) included. */
export function reach(bar: TornadoBar, amount: (side: TornadoSide) => number): number {
  const [low, high] = [amount(bar.low), amount(bar.high)];
  return Math.max(low, high, 0) - Math.min(low, high, 0);
}

/**
 * Bars that reach at least `least`, the furthest first (ties by id, by code unit), split after the first
 * `most`.
 */
export function rankBars(
  bars: readonly TornadoBar[],
  amount: (side: TornadoSide) => number,
  least: number,
  most = 12,
): { shown: TornadoBar[]; rest: TornadoBar[] } {
  const ranked = bars
    .filter((bar) => reach(bar, amount) >= least)
    .sort((a, b) => reach(b, amount) - reach(a, amount) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  return { shown: ranked.slice(0, most), rest: ranked.slice(most) };
}
