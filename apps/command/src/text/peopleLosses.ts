import {
  columnDays,
  formatDate,
  formatDays,
  formatPercent,
  groupDigits,
  roundSignificant,
} from "@leeway/charts";
import type { PeopleLoad } from "@leeway/core";
import { type Column, table, wrap } from "./page.ts";

/** Everybody lost in turn, the worst first: whom the commitment hangs on. */
export function lossLines(load: PeopleLoad, width: number): string[] {
  const { losses, plan } = load;
  const [worst] = losses ?? [];
  if (losses === undefined || worst === undefined) return [];
  const asks = worst.chance.finishBy !== undefined;
  const columns: Column[] = [
    { heading: "without", align: "left" },
    { heading: "from", align: "left" },
    { heading: "to", align: "left" },
    { heading: "days", align: "right" },
    { heading: plan.currency, align: "right" },
    ...(asks ? [{ heading: "date asked", align: "right" } as const] : []),
  ];
  const rows = losses.map(({ person, from, to, effect, chance }) => [
    person.name,
    formatDate(from, "weekday-no-year"),
    formatDate(to, "weekday-no-year"),
    columnDays(effect.workingDays, true),
    Math.abs(effect.money) < 0.5 ? "0" : groupDigits(roundSignificant(effect.money, 2)),
    ...(asks ? [formatPercent(chance.finishBy?.[1] ?? 0)] : []),
  ]);
  const was = asks
    ? `; the date asked for stands at ${formatPercent(worst.chance.finishBy?.[0] ?? 0)} now`
    : "";
  return [
    ...wrap(
      `Each away in turn for ${formatDays(Math.max(...losses.map(({ days }) => days)))}: what the commitment moves by${was}`,
      width,
    ),
    ...table(columns, rows, width),
  ];
}
