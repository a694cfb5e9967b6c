import { columnDays, heldText } from "@leeway/charts";
import type { Driver, Forecast, TornadoBar } from "@leeway/core";
import { hasMoney, meanSum } from "./moneyWords.ts";
import { bar, type Column, table } from "./page.ts";

const SHOWN = 5;

function largestFirst(a: Driver, b: Driver): number {
  const byDays = Math.abs(b.days) - Math.abs(a.days);
  const byMoney = Math.abs(b.money) - Math.abs(a.money);
  return byDays || byMoney || (a.id < b.id ? -1 : 1);
}

/** The five largest drivers, in working days and money, each the mean over all futures. */
export function driverLines(forecast: Forecast, width: number): string[] {
  const counted = forecast.drivers.filter(({ days, money }) => days !== 0 || money !== 0);
  const drivers = counted.sort(largestFirst).slice(0, SHOWN);
  if (drivers.length === 0) return ["Nothing in the plan is uncertain, so nothing drives it."];
  const money = hasMoney(forecast);
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "days", align: "right" },
    ...(money ? [{ heading: forecast.plan.currency, align: "right" } as const] : []),
    { heading: "", align: "left" },
  ];
  const room = Math.max(8, Math.min(24, width - 58));
  const largest = Math.max(...drivers.map(({ days }) => days));
  const rows = drivers.map((driver) => [
    driver.name,
    columnDays(driver.days),
    ...(money ? [meanSum(driver.money)] : []),
    bar(driver.days, largest, room),
  ]);
  const what = money ? "working days and money it adds" : "working days it adds";
  return [`What drives it: ${what}, on average`, ...table(columns, rows, width)];
}

function side(days: number): string {
  return columnDays(days, true);
}

/** What each item alone does to the committed level, held low and held high. `money`: whether the plan speaks of it. */
export function tornadoLines(
  bars: readonly TornadoBar[],
  { money, currency }: { money: boolean; currency: string },
  width: number,
): string[] {
  if (bars.length === 0) return ["One at a time: no single item moves the committed finish or sum."];
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "low", align: "right" },
    { heading: "days", align: "right" },
    { heading: "high", align: "right" },
    { heading: "days", align: "right" },
    ...(money ? [{ heading: `${currency}, low to high`, align: "left" } as const] : []),
  ];
  const rows = bars
    .slice(0, 10)
    .map((item) => [
      item.name,
      heldText(item, "low", currency),
      side(item.low.workingDays),
      heldText(item, "high", currency),
      side(item.high.workingDays),
      ...(money ? [`${meanSum(item.low.money)} to ${meanSum(item.high.money)}`] : []),
    ]);
  return ["One at a time: the committed level, this item low or high", ...table(columns, rows, width)];
}
