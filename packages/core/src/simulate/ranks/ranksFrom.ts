import { rankOf } from "../../forecast/ranks.ts";
import { selectRanks } from "../../kernel/twins/selectRanks.ts";
import type { KeptRanks } from "./types.ts";

let gathered = new Float64Array(1024);

/**
 * The values of a row at `rankOf(p, n)`, exactly, n being all values that the parts have seen of it; one for each
 * probability of the keepers, in their order. The parts come from keepers of the same rows and probabilities.
 *
 * undefined where a bracket missed: what came first was not like what came later (probability below 1e-9 where it
 * is a random sample). Then the values must be had some other way.
 *
 * Cost: a few steps for each value kept: next to nothing for one part that has seen all, as it has kept next to nothing.
 */
export function ranksFrom(parts: readonly KeptRanks[], row: number): (number | undefined)[] {
  const ps = parts[0]?.ps ?? new Float64Array(0);
  const n = parts.reduce((sum, part) => sum + (part.seen[row] as number), 0);
  return Array.from(ps, (p, i) =>
    n === 0 ? undefined : valueAt(parts, row, row * ps.length + i, rankOf(p, n)),
  );
}

/** The brackets' common part is a bracket of all values together: it is searched for the rank. */
function valueAt(parts: readonly KeptRanks[], row: number, at: number, rank: number): number | undefined {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (const part of parts) {
    low = Math.max(low, part.low[at] as number);
    high = Math.min(high, part.high[at] as number);
  }
  if (low > high) return undefined;
  let below = 0;
  let atLow = 0;
  let atHigh = 0;
  let inside = 0;
  for (const part of parts) {
    const from = part.from[row] as number;
    const to = part.from[row + 1] as number;
    const partLow = part.low[at] as number;
    const partHigh = part.high[at] as number;
    below += part.below[at] as number;
    if (partLow < low) below += part.atLow[at] as number;
    if (partLow === low) atLow += part.atLow[at] as number;
    else if (partHigh === low) atLow += part.atHigh[at] as number;
    if (partHigh === high && low < high) atHigh += part.atHigh[at] as number;
    if (gathered.length < inside + to - from) gathered = grown(gathered, inside + to - from);
    for (let k = from; k < to; k++) {
      const value = part.values[k] as number;
      if (value <= partLow || value > high) continue;
      if (value < low) below++;
      else if (value === low) atLow++;
      else if (value < high) gathered[inside++] = value;
      else atHigh++;
    }
  }
  if (rank <= below) return undefined;
  if (rank <= below + atLow) return low;
  const k = rank - below - atLow;
  if (k <= inside) return selectRanks(gathered.subarray(0, inside), [k])[0];
  return k <= inside + atHigh ? high : undefined;
}

function grown(values: Float64Array<ArrayBuffer>, length: number): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(2 * length);
  longer.set(values);
  return longer;
}
