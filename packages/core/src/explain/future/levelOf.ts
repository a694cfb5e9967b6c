import type { Estimate } from "../../plan/types.ts";
import { fillFromTable, outcomeTable, quantileTable } from "../../sampling/index.ts";

const u = new Float64Array(1);
const out = new Float64Array(1);

/**
 * The chance that an estimate comes to at most `value`: of a range, the greatest probability whose tabulated quantile,
 * the one draws are made with, is at most that. `value` in the estimate's unit. 1 for a certain one.
 *
 * Cost: 60 looks into the table.
 */
export function levelOf(estimate: Estimate, value: number): number {
  if (estimate.kind === "fixed") return 1;
  if (estimate.kind === "outcomes") {
    const { values, upTo } = outcomeTable(estimate);
    const at = values.findLastIndex((each) => each <= value);
    return at < 0 ? 0 : Math.min(1, (upTo[at] as number) - 1e-9);
  }
  const table = quantileTable(estimate);
  const quantile = (p: number): number => {
    u[0] = p;
    fillFromTable(table, u, out, 1);
    return out[0] as number;
  };
  if (quantile(1) <= value) return 1;
  let low = 0;
  let high = 1;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (quantile(middle) <= value) low = middle;
    else high = middle;
  }
  return low;
}
