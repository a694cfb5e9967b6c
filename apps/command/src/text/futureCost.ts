import { groupDigits } from "@leeway/charts";
import type { Future } from "@leeway/core";
import { type Column, table } from "./page.ts";

const SHOWN = 8;

/** The cost by component, largest first, to the unit: the lines shown and the rest add up to the total. */
export function costTable({ cost, plan, lateness }: Future, width: number): string[] {
  if (cost.lines.length === 0) return [];
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: plan.currency, align: "right" },
  ];
  const sorted = [...cost.lines].sort(
    (a, b) => Math.abs(b.money) - Math.abs(a.money) || (a.id < b.id ? -1 : 1),
  );
  const shown = sorted.length > SHOWN + 1 ? sorted.slice(0, SHOWN) : sorted;
  const rest = sorted.slice(shown.length);
  const rows = [
    ...shown.map(({ kind, name, money }) => [kind === "task" ? name : `${name} (${kind})`, units(money)]),
    ...(rest.length === 0
      ? []
      : [[`${rest.length} smaller`, units(rest.reduce((sum, { money }) => sum + money, 0))]]),
    ["in all", units(cost.total)],
  ];
  const late =
    lateness === undefined || lateness === 0
      ? []
      : [`  beside the total, finishing late costs ${units(lateness)}`];
  return ["What it costs", ...table(columns, rows, width), ...late];
}

function units(money: number): string {
  return groupDigits(Math.round(money));
}
