import { formatDate, formatPercent, groupDigits, roundToLimits } from "@leeway/charts";
import type { CostPercentile, FinishPercentile, Forecast } from "@leeway/core";
import { hasMoney } from "./moneyWords.ts";
import { type Column, table } from "./page.ts";

const NEIGHBOURS = [0.5, 0.8, 0.9];

function between(low: string, high: string): string {
  return low === high ? low : `${low} to ${high}`;
}

function finishCells(row: FinishPercentile): string[] {
  return [
    formatDate(row.date, "weekday"),
    between(formatDate(row.lowDate, "shortest"), formatDate(row.highDate, "shortest")),
  ];
}

function costCells(row: CostPercentile): string[] {
  const round = (value: number) => groupDigits(roundToLimits(value, row.low, row.high));
  return [round(row.value), between(round(row.low), round(row.high))];
}

/**
 * The neighbours of the committed level with their sampling limits, so that the level itself can be
 * questioned. One table where it fits, else one for time and one for money.
 */
export function levelLines(forecast: Forecast, width: number): string[] {
  const level = forecast.committed.confidence;
  const isWanted = ({ p }: { p: number }) => p === level || NEIGHBOURS.includes(p);
  const finishes = forecast.finish.percentiles.filter(isWanted);
  const costs = forecast.cost.percentiles.filter(isWanted);
  const label = (p: number) => `${formatPercent(p)}${p === level ? " *" : "  "}`;
  const first: Column = { heading: "level  ", align: "right" };
  const time: Column[] = [
    { heading: "finish by", align: "left" },
    { heading: "sampling limits", align: "left" },
  ];
  const money: Column[] = [
    { heading: `cost, ${forecast.plan.currency}`, align: "right" },
    { heading: "sampling limits", align: "left" },
  ];
  const title = "Levels side by side (* committed to; limits at 95 %)";
  const timeRows = finishes.map((row) => [label(row.p), ...finishCells(row)]);
  if (!hasMoney(forecast)) return [title, ...table([first, ...time], timeRows)];
  const moneyRows = costs.map((row) => [label(row.p), ...costCells(row)]);
  const joined = timeRows.map((row, k) => [...row, ...(moneyRows[k]?.slice(1) ?? [])]);
  const wide = table([first, ...time, ...money], joined);
  if (wide.every((line) => line.length <= width)) return [title, ...wide];
  return [title, ...table([first, ...time], timeRows), "", ...table([first, ...money], moneyRows)];
}
