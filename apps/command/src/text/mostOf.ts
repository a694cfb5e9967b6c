import { columnDays, formatMoney, roundMove } from "@leeway/charts";
import type { Comparison } from "@leeway/core";

const SHOWN = 2;

/** The moves that matter most, in a sentence; the two largest, none where nothing moved. */
export function mostOf({ moves, plan }: Comparison): string[] {
  const felt = moves.filter(
    ({ workingDays, money }) => Math.abs(workingDays) >= 0.05 || roundMove(money) !== 0,
  );
  const told = felt.slice(0, SHOWN).map(({ what, workingDays, money }) => {
    const sum = roundMove(money);
    const parts = [
      ...(Math.abs(workingDays) >= 0.05 ? [`${columnDays(workingDays, true)} working days`] : []),
      ...(sum === 0 ? [] : [formatMoney(sum, plan.currency, true)]),
    ];
    return `${what.replace(/\.$/, "")} (${parts.join(", ")})`;
  });
  if (told.length === 0) return [];
  return [felt.length <= SHOWN ? `What moved it: ${told.join("; ")}.` : `Most of it: ${told.join("; ")}.`];
}
