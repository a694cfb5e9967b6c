import type { Forecast } from "../../forecast/types.ts";
import type { Table } from "./tableOf.ts";

type Cell = string | number;
const HEADINGS = [
  "what",
  "id",
  "name",
  "phase",
  "p",
  "date",
  "low date",
  "high date",
  "working days",
  "money",
  "low money",
  "high money",
  "critical",
  "needed",
  "as written start",
  "as written finish",
  "start P10",
  "start P50",
  "start P90",
  "finish P10",
  "finish P50",
  "finish P90",
  "finish committed",
  "mean working days",
  "mean money",
  "target",
  "chance of target",
  "currency",
  "seed",
  "futures",
  "design",
  "plan",
  "version",
] as const;

/**
 * A forecast as one flat table: the finish and the cost by level with their limits, then every task. Dates, working
 * days and money, each in a column of its own; every row carries the run stamp, so that a row alone can be traced.
 */
export function forecastTable(forecast: Forecast): Table {
  const { plan, seed, iterations, design, version, finish, cost, tasks, committed, asWritten } = forecast;
  const rows: Partial<Record<(typeof HEADINGS)[number], Cell>>[] = [
    {
      what: "as written",
      date: asWritten.finish,
      "working days": asWritten.workingDays,
      money: asWritten.cost,
    },
    {
      what: "committed",
      p: committed.confidence,
      date: committed.date,
      "low date": committed.lowDate,
      "high date": committed.highDate,
      "working days": committed.workingDays,
      money: committed.cost,
      "low money": committed.costLow,
      "high money": committed.costHigh,
    },
    ...finish.percentiles.map(({ p, date, lowDate, highDate, workingDays }) => {
      return {
        what: "finish",
        p,
        date,
        "low date": lowDate,
        "high date": highDate,
        "working days": workingDays,
      };
    }),
    ...cost.percentiles.map(({ p, value, low, high }) => {
      return { what: "cost", p, money: value, "low money": low, "high money": high };
    }),
    ...tasks.map((task) => ({
      what: task.milestone ? "milestone" : "task",
      id: task.id,
      name: task.name,
      phase: task.phase ?? "",
      critical: task.critical,
      needed: task.needed,
      "as written start": task.asWritten.needed ? task.asWritten.startDate : "",
      "as written finish": task.asWritten.needed ? task.asWritten.finishDate : "",
      "start P10": task.startDates.p10,
      "start P50": task.startDates.p50,
      "start P90": task.startDates.p90,
      "finish P10": task.finishDates.p10,
      "finish P50": task.finishDates.p50,
      "finish P90": task.finishDates.p90,
      "finish committed": task.finishDates.committed,
      "mean working days": task.duration.mean,
      "mean money": task.cost.mean,
      target: task.target?.date ?? "",
      "chance of target": task.target?.chance ?? "",
    })),
  ];
  const stamp = { currency: plan.currency, seed, futures: iterations, design, plan: plan.sha256, version };
  return {
    header: [...HEADINGS],
    rows: rows.map((row) => HEADINGS.map((heading): Cell => ({ ...row, ...stamp })[heading] ?? "")),
  };
}
