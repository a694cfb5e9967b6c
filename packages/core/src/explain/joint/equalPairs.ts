import type { Row } from "./jointChance.ts";

/** A day and a sum that enough iterations keep together. */
export interface EqualPair {
  day: number;
  cost: number;
}

/**
 * Every pair of a day and a sum that at least `count` iterations keep together, and of which neither can be made
 * smaller alone: ascending by day, descending by cost. Both are values of the rows. Empty when `count` > n.
 *
 * Exact: the iterations are taken in by day, and the sum that goes with a day is the count-th smallest cost so far,
 * which a heap of the `count` smallest keeps at its top. Cost: O(n log n).
 */
export function equalPairs(days: Row, costs: Row, count: number): EqualPair[] {
  const n = days.length;
  if (count < 1 || count > n) return [];
  const order = Uint32Array.from({ length: n }, (_, k) => k).sort(
    (a, b) => (days[a] as number) - (days[b] as number),
  );
  const heap = new Float64Array(count);
  const pairs: EqualPair[] = [];
  let size = 0;
  for (let k = 0; k < n; ) {
    const day = days[order[k] as number] as number;
    for (; k < n && days[order[k] as number] === day; k++) {
      const cost = costs[order[k] as number] as number;
      if (size < count) rise(heap, size++, cost);
      else if (cost < (heap[0] as number)) sink(heap, cost);
    }
    if (size < count) continue;
    const cost = heap[0] as number;
    const last = pairs[pairs.length - 1];
    if (last === undefined || cost < last.cost) pairs.push({ day, cost });
  }
  return pairs;
}

/** Puts a value into a heap whose largest is at the top, at place `at`. */
function rise(heap: Float64Array, at: number, value: number): void {
  let hole = at;
  while (hole > 0) {
    const parent = (hole - 1) >> 1;
    if ((heap[parent] as number) >= value) break;
    heap[hole] = heap[parent] as number;
    hole = parent;
  }
  heap[hole] = value;
}

/** Replaces the largest value of a full heap. */
function sink(heap: Float64Array, value: number): void {
  const size = heap.length;
  let hole = 0;
  for (;;) {
    let child = 2 * hole + 1;
    if (child >= size) break;
    if (child + 1 < size && (heap[child + 1] as number) > (heap[child] as number)) child += 1;
    if ((heap[child] as number) <= value) break;
    heap[hole] = heap[child] as number;
    hole = child;
  }
  heap[hole] = value;
}
