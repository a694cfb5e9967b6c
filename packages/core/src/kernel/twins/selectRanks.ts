const binCount = 2048;
const bins = new Uint32Array(binCount + 1);

/**
 * The values at the given ranks (1-based, any order) of `values`, without sorting all of them: one pass counts
 * into bins, a second gathers the bins that hold a wanted rank, and only those are sorted. Exact.
 *
 * Cost: about 3 n steps; falls back to a full sort where all values crowd into few bins.
 */
export function selectRanks(values: Float64Array, ranks: readonly number[]): number[] {
  const n = values.length;
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < n; k++) {
    const v = values[k] as number;
    if (v < min) min = v;
    if (v > max) max = v;
  }
  if (min === max) return ranks.map(() => min);
  if (n < 256) return fromSorted(Float64Array.from(values).sort(), ranks);
  const scale = (binCount * (1 - 1e-12)) / (max - min);
  bins.fill(0);
  for (let k = 0; k < n; k++) {
    const bin = (((values[k] as number) - min) * scale) | 0;
    bins[bin] = (bins[bin] as number) + 1;
  }
  const answers = new Map<number, number>();
  const wanted = [...new Set(ranks)].sort((a, b) => a - b);
  const needs = new Map<number, { before: number; ranks: number[] }>();
  let bin = 0;
  let before = 0;
  for (const rank of wanted) {
    while (before + (bins[bin] as number) < rank) before += bins[bin++] as number;
    const need = needs.get(bin) ?? { before, ranks: [] };
    need.ranks.push(rank);
    needs.set(bin, need);
  }
  let gathered = 0;
  for (const key of needs.keys()) gathered += bins[key] as number;
  if (gathered * 4 > n) return fromSorted(Float64Array.from(values).sort(), ranks);
  const slotOf = new Int32Array(binCount + 1).fill(-1);
  const lists = [...needs.entries()].map(([key, need], index) => {
    slotOf[key] = index;
    return { need, values: new Float64Array(bins[key] as number), length: 0 };
  });
  for (let k = 0; k < n; k++) {
    const v = values[k] as number;
    const slot = slotOf[((v - min) * scale) | 0] as number;
    if (slot < 0) continue;
    const list = lists[slot] as (typeof lists)[number];
    list.values[list.length++] = v;
  }
  for (const { need, values: list } of lists) {
    list.sort();
    for (const rank of need.ranks) answers.set(rank, list[rank - need.before - 1] as number);
  }
  return ranks.map((rank) => answers.get(rank) as number);
}

function fromSorted(sorted: Float64Array, ranks: readonly number[]): number[] {
  return ranks.map((rank) => sorted[rank - 1] as number);
}
