import type { Driver, Forecast } from "@leeway/core";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import { kindWord } from "./draw/kinds.ts";
import { drawDrivers } from "./drivers/drawDrivers.ts";
import { rankDrivers } from "./drivers/rankDrivers.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { forecastSpends } from "./sentences/speaksOfMoney.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDays } from "./words/formatDays.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { plainName, quoteName } from "./words/plainName.ts";
import { roundSignificant } from "./words/roundSignificant.ts";

/**
 * The five largest drivers, each with the working days and the money it adds on average; with the days alone where the
 * plan has no money.
 *
 * Reads `drivers`, `cost`, `asked`. Largest: by share of the days or of the money, whichever is more.
 */
export function driversBars(forecast: Forecast, options: ChartOptions): Figure {
  const { currency } = forecast.plan;
  const spends = forecastSpends(forecast);
  const drivers = rankDrivers(forecast.drivers, 5);
  const money = (value: number, unit: string) => formatMoney(roundSignificant(value, 2), unit);
  const subtitle = `Mean over the futures of what each item adds, in working days on critical tasks${spends ? ` and in ${currency}` : ""}`;
  const table = {
    columns: [
      { name: "Item", align: "start" as const },
      { name: "Kind", align: "start" as const },
      { name: "Adds", unit: "working days", align: "end" as const },
      ...(spends ? [{ name: "Adds", unit: currency, align: "end" as const }] : []),
    ],
    rows: drivers.map((driver) => [
      plainName(driver.name),
      kindWord(driver.kind) || "task",
      columnDays(driver.days),
      ...(spends ? [money(driver.money, "")] : []),
    ]),
  };
  if (drivers.length === 0) {
    const sentence = `No estimate, risk or assumption in this plan adds days${spends ? " or money" : ""} to what is written.`;
    const title = "Nothing adds to the plan as written";
    return { title, subtitle, summary: sentence, table, svg: emptyDrawing(sentence, options) };
  }
  const title = finding(drivers, spends, (value) => money(value, currency));
  const parts = drivers.map(
    (driver) =>
      `${quoteName(driver.name)} ${formatDays(driver.days)}${spends ? ` and ${money(driver.money, currency)}` : ""}`,
  );
  return {
    title,
    subtitle,
    summary: `The ${drivers.length === 1 ? "only driver" : `${drivers.length} largest drivers`}: ${parts.join("; ")}.`,
    table,
    svg: drawDrivers(drivers, spends ? currency : undefined, (value) => money(value, ""), options),
  };
}

function finding(drivers: readonly Driver[], spends: boolean, money: (value: number) => string): string {
  const byDays = drivers.reduce((most, each) => (each.days > most.days ? each : most));
  const byMoney = drivers.reduce((most, each) => (each.money > most.money ? each : most));
  const [days, sum] = [byDays.days > 0, byMoney.money > 0];
  if (days && sum && byDays === byMoney)
    return `${quoteName(byDays.name)} adds most: ${formatDays(byDays.days)} and ${money(byDays.money)} on average`;
  if (days && sum)
    return `${quoteName(byDays.name)} adds most time, ${formatDays(byDays.days)} on average; ${quoteName(byMoney.name)} most money, ${money(byMoney.money)}`;
  if (days) return `${quoteName(byDays.name)} adds most: ${formatDays(byDays.days)} on average`;
  if (sum) return `${quoteName(byMoney.name)} adds most: ${money(byMoney.money)} on average`;
  return `On average the largest items save time${spends ? " and money" : ""}`;
}
