import { eachBlock } from "../../explain/paths/eachBlock.ts";
import type { Draw } from "../../explain/variants.ts";
import { meanAndSd } from "../../forecast/moments.ts";
import { type RankSelector, rankSelector } from "../../forecast/rankSelector.ts";
import { rankOf } from "../../forecast/ranks.ts";
import { bytesOfLedger, type Ledger, newLedger } from "../../kernel/index.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { blockSize } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import type { Model } from "../../simulate/model.ts";
import { type Months, phaseMoney } from "../../simulate/months.ts";
import type { MonthMoney, Spread } from "../types.ts";
import { type ComponentKind, modelOfKind } from "./kinds.ts";
import { splitAt } from "./splitAt.ts";

/** Rows held at once, in bytes: kinds that do not fit are computed in a further run. */
const heldBytes = 64e6;

/**
 * Money by month: what is spent in each at P50 and P80, in all and by kind, and what by its end; the months' parts of the
 * committed sum add up to it. Money falls due as `simulate` has it.
 *
 * @param shown  How many of the months; later ones hold nothing.
 *
 * Cost: a run of the model for each 64 MB of rows (8 bytes an iteration, month and kind).
 */
export function monthMoney(
  model: Model,
  asWritten: AsWritten,
  draw: Draw,
  confidence: number,
  { months, shown, kinds }: { months: Months; shown: number; kinds: readonly ComponentKind[] },
): MonthMoney[] {
  const n = draw.iterations;
  const select = rankSelector(n);
  const list: (ComponentKind | "total")[] = ["total", ...kinds];
  const atOnce = Math.max(1, Math.floor(heldBytes / (8 * n * months.names.length)));
  const result = months.names.slice(0, shown).map(
    (month): MonthMoney => ({
      month,
      spent: { mean: 0, p50: 0, p80: 0, split: 0 },
      byEnd: { p50: 0, p80: 0, committed: 0 },
      components: [],
    }),
  );
  for (let from = 0; from < list.length; from += atOnce) {
    const some = list.slice(from, from + atOnce).map((kind) => ({
      kind,
      model: kind === "total" ? model : modelOfKind(model, kind),
      rows: months.names.map(() => new Float64Array(n)),
    }));
    let ledger: Ledger | undefined;
    const size = Math.min(n, blockSize);
    eachBlock(
      model,
      draw,
      asWritten.starts,
      (block, first) => {
        ledger ??= newLedger(block.kernel.arena, months, size);
        markFinish(model, block);
        for (const one of some) phaseMoney(one.model, block, ledger, first, one.rows);
      },
      undefined,
      bytesOfLedger(months, size),
    );
    for (const { kind, rows } of some) {
      if (kind === "total")
        result.forEach((month, m) => {
          const [p50, p80, committed] = select(
            rows[m] as Float64Array,
            [0.5, 0.8, confidence].map((p) => rankOf(p, n)),
          ) as [number, number, number];
          month.byEnd = { p50, p80, committed };
        });
      // From what is spent by the end of each month to what is spent in it, last first.
      for (let m = rows.length - 1; m > 0; m--) {
        const row = rows[m] as Float64Array;
        const before = rows[m - 1] as Float64Array;
        for (let k = 0; k < n; k++) row[k] = (row[k] as number) - (before[k] as number);
      }
      result.forEach((month, m) => {
        const spread = spreadOf(rows[m] as Float64Array, select);
        if (kind === "total") month.spent = { ...spread, split: 0 };
        else if (spread.mean !== 0 || spread.p80 !== 0) month.components.push({ kind, ...spread });
      });
      if (kind === "total") splitMonths(result, rows, confidence);
    }
  }
  return result;
}

/** Mean, P50 and P80 of a row. */
export function spreadOf(row: Float64Array, select: RankSelector): Spread {
  const n = row.length;
  const [p50, p80] = select(row, [rankOf(0.5, n), rankOf(0.8, n)]) as [number, number];
  return { mean: meanAndSd(row).mean, p50, p80 };
}

function splitMonths(result: MonthMoney[], rows: readonly Float64Array[], p: number): void {
  const n = (rows[0] as Float64Array).length;
  const total = new Float64Array(n);
  for (const row of rows) for (let k = 0; k < n; k++) total[k] = (total[k] as number) + (row[k] as number);
  const { parts } = splitAt(total, rows.slice(0, result.length), p);
  result.forEach((month, m) => {
    month.spent.split = parts[m] as number;
  });
}
