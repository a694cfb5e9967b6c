import type { Estimate, Id } from "../../plan/types.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import { mixtureQuantile } from "./mixtureQuantile.ts";
import type { Disagreement, PooledVoice } from "./types.ts";

/**
 * How far apart the voices are. Which figures tell it is common practice, no source. "Far out" compares with every other
 * range on its own: an average of the others would be moved by whoever is out.
 */
export function disagreementOf(
  voices: readonly PooledVoice[],
  estimates: readonly Estimate[],
  pooled: { low: number; high: number },
): Disagreement {
  const likelies = voices.map(({ likely }) => likely);
  const likelyLow = Math.min(...likelies);
  const likelyHigh = Math.max(...likelies);
  const range = pooled.high - pooled.low;
  const low = Math.max(...voices.map((voice) => voice.low));
  const high = Math.min(...voices.map((voice) => voice.high));
  const apart = pairsApart(voices);
  const farOut = voices.length < 3 ? [] : outsiders(voices);
  const alike = farOut.length === 0 && likelyLow >= low && likelyHigh <= high;
  const average = (p: number) =>
    estimates.reduce((sum, estimate) => sum + estimateQuantile(estimate, p), 0) / estimates.length;
  return {
    level: voices.length === 1 ? "one" : apart.length > 0 ? "apart" : alike ? "agree" : "differ",
    likelyLow,
    likelyHigh,
    spread: range > 0 ? (likelyHigh - likelyLow) / range : 0,
    ...(low <= high && { common: { low, high } }),
    apart,
    farOut,
    either: { low: mixtureQuantile(estimates, 0.1), high: mixtureQuantile(estimates, 0.9) },
    pooled: { low: average(0.1), high: average(0.9) },
  };
}

function pairsApart(voices: readonly PooledVoice[]): [Id, Id][] {
  return voices.flatMap((first) =>
    voices.filter((second) => first.high < second.low).map((second): [Id, Id] => [first.by, second.by]),
  );
}

function outsiders(voices: readonly PooledVoice[]): Disagreement["farOut"] {
  return voices.flatMap(({ by, likely }): Disagreement["farOut"] => {
    const others = voices.filter((voice) => voice.by !== by);
    if (others.some(({ low, high }) => low <= likely && likely <= high)) return [];
    const low = Math.min(...others.map((voice) => voice.low));
    const high = Math.max(...others.map((voice) => voice.high));
    const side = likely < low ? "low" : likely > high ? "high" : "between";
    return [{ by, side, others: { low, high } }];
  });
}
