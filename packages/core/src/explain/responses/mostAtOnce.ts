/**
 * The greatest weight of items no two of which are ordered: the most that can be under way at once.
 *
 * By the weighted form of Dilworth's theorem (R. P. Dilworth 1950, Annals of Mathematics 51, 161-166; recalled) it is the
 * whole weight less the most that can be handed on along the order, each item handing on and taking over at most
 * its weight: a maximum flow, found by shortest augmenting paths (Edmonds & Karp 1972, J. ACM 19, 248-264; recalled).
 *
 * @param weights  Above 0, length m.
 * @param before   Whether item i is ordered before item j; transitive.
 *
 * Cost: O(m^2) a path, about m paths where weights are alike.
 */
export function mostAtOnce(weights: readonly number[], before: (i: number, j: number) => boolean): number {
  const m = weights.length;
  const gives = Float64Array.from(weights);
  const takes = Float64Array.from(weights);
  const flow = Array.from({ length: m }, () => new Float64Array(m));
  const order = Array.from({ length: m }, (_, i) =>
    Array.from({ length: m }, (_, j) => j).filter((j) => i !== j && before(i, j)),
  );
  let moved = 0;
  for (;;) {
    const path = shortestPath(gives, takes, flow, order);
    if (path === undefined) break;
    moved += path;
  }
  return weights.reduce((sum, weight) => sum + weight, 0) - moved;
}

/** Moves as much as the shortest path allows and answers how much; undefined when there is no path. */
function shortestPath(
  gives: Float64Array,
  takes: Float64Array,
  flow: readonly Float64Array[],
  order: readonly number[][],
): number | undefined {
  const m = gives.length;
  const least = 1e-12;
  // Givers are 0 to m - 1, takers m to 2m - 1; -1: not reached, -2: where a path begins.
  const from = new Int32Array(2 * m).fill(-1);
  const queue: number[] = [];
  for (let i = 0; i < m; i++) {
    if ((gives[i] as number) <= least) continue;
    from[i] = -2;
    queue.push(i);
  }
  for (let at = 0; at < queue.length; at++) {
    const node = queue[at] as number;
    if (node >= m) {
      const j = node - m;
      if ((takes[j] as number) > least) return augment(gives, takes, flow, from, j);
      // Back along what is already handed on.
      for (let i = 0; i < m; i++) {
        if (from[i] !== -1 || ((flow[i] as Float64Array)[j] as number) <= least) continue;
        from[i] = node;
        queue.push(i);
      }
    } else {
      for (const j of order[node] as number[]) {
        if (from[m + j] !== -1) continue;
        from[m + j] = node;
        queue.push(m + j);
      }
    }
  }
  return undefined;
}

function augment(
  gives: Float64Array,
  takes: Float64Array,
  flow: readonly Float64Array[],
  from: Int32Array,
  end: number,
): number {
  const m = gives.length;
  const path: [i: number, j: number, sign: 1 | -1][] = [];
  let amount = takes[end] as number;
  let taker = end;
  for (;;) {
    const giver = from[m + taker] as number;
    path.push([giver, taker, 1]);
    const back = from[giver] as number;
    if (back === -2) {
      amount = Math.min(amount, gives[giver] as number);
      gives[giver] = (gives[giver] as number) - amount;
      break;
    }
    taker = back - m;
    path.push([giver, taker, -1]);
    amount = Math.min(amount, (flow[giver] as Float64Array)[taker] as number);
  }
  takes[end] = (takes[end] as number) - amount;
  for (const [i, j, sign] of path) {
    const row = flow[i] as Float64Array;
    row[j] = (row[j] as number) + sign * amount;
  }
  return amount;
}
