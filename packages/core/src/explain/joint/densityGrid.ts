import type { Row } from "./jointChance.ts";

export interface DensityGrid {
  days: number[];
  costs: number[];
  counts: number[][];
}

const columns = 40;
const rows = 28;

/**
 * Counts of iterations on a grid of at most 40 by 28 cells with round edges. `days` are whole day numbers: a cell
 * holds `edge <= day < next edge`, and likewise for costs. Cost: n steps.
 */
export function densityGrid(days: Row, costs: Row): DensityGrid {
  const dayEdges = edges(days, columns, dayStep);
  const costEdges = edges(costs, rows, moneyStep);
  const across = dayEdges.length - 1;
  const up = costEdges.length - 1;
  const counts = Array.from({ length: up }, () => new Array<number>(across).fill(0));
  const stepDay = (dayEdges[1] as number) - (dayEdges[0] as number);
  const stepCost = (costEdges[1] as number) - (costEdges[0] as number);
  for (let k = 0; k < days.length; k++) {
    const column = Math.floor(((days[k] as number) - (dayEdges[0] as number)) / stepDay);
    const row = Math.floor(((costs[k] as number) - (costEdges[0] as number)) / stepCost);
    // Division may round across an edge; the outermost cells take what it puts outside.
    const line = counts[Math.min(up - 1, Math.max(0, row))] as number[];
    const at = Math.min(across - 1, Math.max(0, column));
    line[at] = (line[at] as number) + 1;
  }
  return { days: dayEdges, costs: costEdges, counts };
}

function edges(values: Row, most: number, stepOf: (least: number) => number): number[] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < values.length; k++) {
    const value = values[k] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // One cell is kept back for edges that do not fall on the least value.
  const step = stepOf((high - low) / (most - 1));
  const from = Math.floor(low / step);
  const to = Math.floor(high / step) + 1;
  return Array.from({ length: to - from + 1 }, (_, k) => (from + k) * step);
}

/** Whole days: 1, 2, then whole weeks. */
function dayStep(least: number): number {
  if (least <= 1) return 1;
  if (least <= 2) return 2;
  return 7 * Math.ceil(least / 7);
}

/** 1, 2 or 5 times a power of ten. */
function moneyStep(least: number): number {
  if (!(least > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(least));
  const digit = least / power;
  return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
}
