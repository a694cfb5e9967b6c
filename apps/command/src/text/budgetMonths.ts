import { formatDate, formatPercent, fundsFinding, monthName, monthsToShow } from "@leeway/charts";
import type { Budget } from "@leeway/core";
import { sumsOf } from "./budgetSums.ts";
import { type Column, table, wrap } from "./page.ts";

const right = (heading: string): Column => ({ heading, align: "right" });

/** When the money is needed against when it is released, and what would cure a month that runs short. */
export function monthLines(budget: Budget, width: number): string[][] {
  const { months, funds, plan, confidence, total } = budget;
  if (months.length === 0 || total.committed === 0) return [];
  const { column, statedColumn, step, say } = sumsOf(budget);
  const level = formatPercent(confidence);
  const sums = months.map(({ byEnd }) => [byEnd.p50, byEnd.p80]);
  const inIt = months.map(({ spent }) => spent.p80);
  const shown = months.slice(0, monthsToShow(sums, step, inIt));
  const head = [
    { heading: "", align: "left" } as Column,
    right("in it P50"),
    right("P80"),
    right("by end P50"),
    right("P80"),
    ...(funds === undefined ? [] : [right("released"), right("covered"), right("short")]),
  ];
  const rows = shown.map(({ month, spent, byEnd, released, chanceCovered, short = 0 }) => [
    monthName(month),
    ...[spent.p50, spent.p80, byEnd.p50, byEnd.p80].map(column),
    ...(funds === undefined
      ? []
      : [
          released === undefined ? "" : statedColumn(released),
          chanceCovered === undefined ? "" : formatPercent(chanceCovered),
          short > 0 ? column(short) : "",
        ]),
  ]);
  const left = funds?.lacking ?? 0;
  return [
    [`When it is needed, ${plan.currency}`, ...table(head, rows, width)],
    [
      ...wrap(`${fundsFinding(budget)}.`, width),
      ...(funds !== undefined && left > 0
        ? wrap(
            `All releases together are ${say(left)} less than the ${level} level costs: earlier alone will not do.`,
            width,
          )
        : []),
      ...(funds?.earlier ?? []).map(
        ({ from, amount, neededBy }) =>
          `  ${formatDate(from)}: ${statedColumn(amount)} are needed by ${formatDate(neededBy)}`,
      ),
    ],
  ];
}
