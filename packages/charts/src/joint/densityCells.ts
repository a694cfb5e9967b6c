import type { JointConfidence } from "@leeway/core";

/** A run of cells of one row that share a tint. `tint`: 0 holds the densest half, 1 the next three tenths, 2 the rest. */
export interface CellRun {
  fromDay: number;
  toDay: number;
  fromCost: number;
  toCost: number;
  tint: 0 | 1 | 2;
}

/**
 * The grid as runs of equal tint. Cells are ranked by count: the fewest that hold half of all futures are darkest,
 * those that make it eight in ten are next, the others that hold any are palest.
 *
 * Source: highest density regions, Hyndman (1996), Computing and graphing highest density regions, The American
 * Statistician 50(2); recalled from memory.
 */
export function densityCells({ days, costs, counts }: JointConfidence["density"]): CellRun[] {
  const filled = counts.flatMap((line, row) =>
    line.flatMap((count, column) => (count > 0 ? [{ row, column, count }] : [])),
  );
  const total = filled.reduce((sum, cell) => sum + cell.count, 0);
  filled.sort((a, b) => b.count - a.count || a.row - b.row || a.column - b.column);
  const tints = new Map<string, 0 | 1 | 2>();
  let held = 0;
  for (const { row, column, count } of filled) {
    // The cell that completes a share belongs to it.
    tints.set(`${row} ${column}`, held < 0.5 * total ? 0 : held < 0.8 * total ? 1 : 2);
    held += count;
  }
  const runs: CellRun[] = [];
  counts.forEach((line, row) => {
    let open: CellRun | undefined;
    line.forEach((_, column) => {
      const tint = tints.get(`${row} ${column}`);
      if (open !== undefined && tint === open.tint) {
        open.toDay = days[column + 1] ?? open.toDay;
        return;
      }
      open = undefined;
      if (tint === undefined) return;
      open = {
        fromDay: days[column] ?? 0,
        toDay: days[column + 1] ?? 0,
        fromCost: costs[row] ?? 0,
        toCost: costs[row + 1] ?? 0,
        tint,
      };
      runs.push(open);
    });
  });
  return runs;
}

/**
 * The part of the grid worth drawing: edges of columns and rows, cut where fewer than one future in 200 lies further
 * out on that side.
 */
export function densityRange({ days, costs, counts }: JointConfidence["density"]): {
  days: [number, number];
  costs: [number, number];
} {
  const across = days.slice(1).map((_, column) => counts.reduce((sum, line) => sum + (line[column] ?? 0), 0));
  const up = counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  return { days: cut(days, across), costs: cut(costs, up) };
}

function cut(edges: readonly number[], counts: readonly number[]): [number, number] {
  const most = counts.reduce((sum, count) => sum + count, 0) / 200;
  let [first, last] = [0, counts.length - 1];
  for (let sum = counts[first] ?? 0; first < last && sum < most; sum += counts[first] ?? 0) first++;
  for (let sum = counts[last] ?? 0; last > first && sum < most; sum += counts[last] ?? 0) last--;
  return [edges[first] ?? 0, edges[last + 1] ?? 1];
}
