import {
  blockRunner,
  blockSize,
  compile,
  leaveTrials,
  newTrials,
  type Plan,
  planAsWritten,
} from "@leeway/core";
import type { HelpedBlock, HelpWanted } from "./helpMessages.ts";
import { partOfTrials } from "./partOfTrials.ts";
import { rowsIn } from "./rowsIn.ts";

export interface HelpDeskTools {
  post: (block: HelpedBlock) => void;
  /** Resolves after messages that have arrived meanwhile were taken. */
  breathe: () => Promise<void>;
}

/**
 * The helper's side of a forecast: computes blocks from the last one down and hands each over at once, while the one
 * it helps computes them from the first one up. Where they meet, it is told to leave; until then it goes on.
 */
export function helpDesk({ post, breathe }: HelpDeskTools): (wanted: HelpWanted) => void {
  let wanted = 0;

  async function help(plan: Plan, turn: number): Promise<void> {
    const model = compile(plan);
    const asWritten = planAsWritten(model);
    if (asWritten.beyond >= 0) return; // the one it helps says so
    const trials = newTrials(model, asWritten, {}, "in kernel");
    const runner = blockRunner(model, asWritten, trials);
    try {
      for (let block = Math.ceil(trials.iterations / blockSize) - 1; block > 0; block--) {
        const first = block * blockSize;
        const count = Math.min(blockSize, trials.iterations - first);
        const sums = runner.run(block, first, count);
        if (typeof sums === "number") return;
        post({ turn, block, sums, rows: together(rowsIn(partOfTrials(trials, first, count, sums))) });
        await breathe();
        if (turn !== wanted) return;
      }
    } finally {
      leaveTrials(trials);
    }
  }

  return ({ turn, plan }) => {
    wanted = turn;
    if (plan === undefined) return;
    // What goes wrong here goes wrong for the one it helps too, who then says it.
    help(plan, turn).catch(() => {});
  };
}

/** Rows in one piece of memory, which can be handed over. */
function together(rows: readonly (Float64Array | Int32Array)[]): Float64Array {
  const all = new Float64Array(rows.reduce((sum, row) => sum + row.length, 0));
  let at = 0;
  for (const row of rows) {
    all.set(row, at);
    at += row.length;
  }
  return all;
}
