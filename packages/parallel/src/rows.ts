import type { MomentRanks, Trials } from "@leeway/core";
import type { Row } from "./messages.ts";

/** Every row of trials that holds one value per iteration, in a fixed order. Views, not copies. */
export function rowsOf(trials: Trials): Row[] {
  const { lateness, worth, months, unlimited } = trials;
  return [
    trials.finish,
    trials.finishDay,
    trials.cost,
    ...trials.starts,
    ...trials.finishes,
    ...trials.intervals,
    ...(lateness === undefined ? [] : [lateness]),
    ...(worth === undefined ? [] : [worth.net, worth.payback]),
    ...(months === undefined ? [] : months.rows),
    ...(unlimited === undefined ? [] : [unlimited.finish, unlimited.cost]),
  ];
}

/** Every row of what was kept of moments. */
export function momentRowsOf(parts: readonly MomentRanks[]): Float64Array[] {
  return parts.flatMap((part) =>
    [part.starts, part.finishes].flatMap((kept) => Object.values(kept) as Float64Array[]),
  );
}

/** The memory behind rows, each piece once, to be handed over instead of copied. */
export function buffersOf(rows: readonly Row[]): ArrayBuffer[] {
  const buffers = new Set<ArrayBuffer>();
  for (const { buffer } of rows) if (buffer instanceof ArrayBuffer) buffers.add(buffer);
  return [...buffers];
}
