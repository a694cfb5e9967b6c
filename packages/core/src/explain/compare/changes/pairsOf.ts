import type { Plan } from "../../../plan/types.ts";

/** Correlation coefficients by pair: `"dig pour"`, the two names in ascending order. */
export function pairsOf({ correlations }: Plan): Map<string, number> {
  const pairs = new Map<string, number>();
  for (const { between, coefficient } of correlations) {
    const names = [...between].sort();
    names.forEach((a, i) => {
      for (const b of names.slice(i + 1)) pairs.set(`${a} ${b}`, coefficient);
    });
  }
  return pairs;
}
