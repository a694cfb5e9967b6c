import type { Drift } from "@leeway/core";
import { moneyUnit, roundTicks, tickLabels } from "./axes/roundTicks.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import { drawDrift } from "./drift/drawDrift.ts";
import { driftStart, markOf, marksSaid } from "./drift/driftMarks.ts";
import { keptSum } from "./drift/driftSentences.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { roundMove } from "./words/roundMove.ts";
import { limitStep, roundToStep } from "./words/roundToLimits.ts";

/**
 * How the committed sum drifted: as `driftDates`, in money. Forecasts in another currency than the last are left out of
 * the drawing, not of the table.
 */
export function driftSums(drift: Drift, options: ChartOptions): Figure {
  const { points } = drift;
  const start = driftStart(drift);
  const last = points.at(-1)?.entry;
  const currency = last?.currency ?? "";
  const place = last === undefined ? 1 : limitStep(last.cost.committed, last.cost.low, last.cost.high);
  const sum = (value: number) => formatMoney(roundToStep(value, place), "");
  const drawn = points.filter((point) => point.entry.currency === currency && keptSum(point) !== undefined);
  const marks = drawn.map((point) => {
    const { cost, asked } = point.entry;
    return {
      ...markOf(point, start),
      value: cost.committed,
      low: cost.p10,
      high: cost.p90,
      ...(asked.budget === undefined ? {} : { asked: asked.budget }),
    };
  });
  const largest = Math.max(0, ...marks.map(({ high }) => Math.abs(high)));
  const unit = moneyUnit(largest, currency);
  const budgeted = drawn.some(({ entry }) => entry.asked.budget !== undefined);
  const title = finding(drift, sum);
  return {
    title,
    subtitle: `Committed sum of each forecast kept, over the day it speaks from; the band runs from P10 to P90${budgeted ? "; dots: the budget" : ""}${marksSaid(marks)}. In ${currency}`,
    summary: `${drawn.length === 1 ? "One forecast" : `A line over ${drawn.length} forecasts`} of the committed sum${budgeted ? ", against the budget" : ""}. ${title}.`,
    table: {
      columns: [
        { name: "As of", align: "start" },
        { name: "Committed", unit: currency, align: "end" },
        { name: "P10", unit: currency, align: "end" },
        { name: "P90", unit: currency, align: "end" },
        ...(budgeted
          ? [
              { name: "Budget", unit: currency, align: "end" as const },
              { name: "Chance of it", align: "end" as const },
            ]
          : []),
        { name: "Why", align: "start" },
      ],
      rows: points.map(({ asOf, entry }) => [
        formatDate(asOf, "weekday"),
        entry.currency === currency
          ? sum(entry.cost.committed)
          : formatMoney(entry.cost.committed, entry.currency),
        sum(entry.cost.p10),
        sum(entry.cost.p90),
        ...(budgeted
          ? [
              entry.asked.budget === undefined ? "" : formatMoney(entry.asked.budget, ""),
              entry.chance.budget === undefined ? "" : formatPercent(entry.chance.budget),
            ]
          : []),
        entry.change.why ?? entry.change.what,
      ]),
    },
    svg:
      marks.length === 0
        ? emptyDrawing("No forecast that speaks of money was kept.", options)
        : drawDrift(
            {
              start,
              marks,
              unit: `Committed sum, ${unit.name}`,
              padding: Math.max(1, largest * 0.02),
              ticks: (from, to, most) => {
                const ticks = roundTicks(from, to, most);
                const labels = tickLabels(ticks, unit.divisor);
                return ticks.map((at, k) => ({ at, label: labels[k] ?? "" }));
              },
              text: sum,
            },
            options,
          ),
  };
}

function finding({ points, moved }: Drift, sum: (value: number) => string): string {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined || keptSum(last) === undefined)
    return "No forecast that speaks of money was kept";
  const { currency, cost } = last.entry;
  const now = `${currency} ${sum(cost.committed)}`;
  if (points.length === 1) return `The first forecast kept commits to ${now}`;
  const since = formatDate(first.asOf);
  if (moved.money === undefined) return `The committed sum is ${now}; sums were in another currency before`;
  const money = roundMove(moved.money);
  if (money === 0) return `The committed sum is ${now}, as it was on ${since}`;
  const by = formatMoney(Math.abs(money), currency);
  return `The committed sum is ${now}, ${by} ${money < 0 ? "less" : "more"} than on ${since}`;
}
