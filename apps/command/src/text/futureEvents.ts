import { columnDays, formatPercent, groupDigits } from "@leeway/charts";
import type { Future, FutureDraw, FutureEvent } from "@leeway/core";
import { type Column, table } from "./page.ts";

/** What of the register occurred, and what it did. */
export function eventLines({ events, plan }: Future, width: number): string[] {
  if (events.length === 0) return [];
  const occurred = events.filter((event) => event.occurred);
  const one = events.length === 1;
  const all = `${events.length} risks and assumptions`;
  if (occurred.length === 0) {
    return [one ? "The one risk or assumption did not occur." : `None of ${all} occurred.`];
  }
  const head = `${one ? "The one risk or assumption" : `Of ${all} ${occurred.length}`} occurred, and what they added`;
  const waits = occurred.some(({ waited }) => waited !== 0);
  const paid = occurred.some(({ money }) => money !== 0);
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "chance", align: "right" },
    { heading: "days", align: "right" },
    ...(waits ? [{ heading: "held back", align: "right" } as const] : []),
    ...(paid ? [{ heading: plan.currency, align: "right" } as const] : []),
  ];
  const rows = occurred.map((event: FutureEvent) => [
    // An assumption's name is what was assumed.
    event.kind === "assumption" ? `Not so: ${event.name}` : event.name,
    formatPercent(event.chance),
    event.days === 0 ? "" : columnDays(event.days, true),
    ...(waits ? [event.waited === 0 ? "" : columnDays(event.waited, true)] : []),
    ...(paid ? [event.money === 0 ? "" : groupDigits(Math.round(event.money))] : []),
  ]);
  return [head, ...table(columns, rows, width)];
}

/** Every draw that counted: the value in its unit, as written, and the chance of at most that much. */
export function drawLines({ draws }: Future, width: number): string[] {
  const columns: Column[] = [
    { heading: "", align: "left" },
    { heading: "drawn", align: "right" },
    { heading: "as written", align: "right" },
    { heading: "at most that", align: "right" },
  ];
  const rows = draws
    .filter(({ counts }) => counts)
    .map((draw) => [
      nameOf(draw),
      unitText(draw, draw.value),
      unitText(draw, draw.asWritten),
      formatPercent(draw.level),
    ]);
  return rows.length === 0 ? [] : ["Every draw that counted", ...table(columns, rows, width)];
}

function nameOf({ of, what, on }: FutureDraw): string {
  const words: Record<string, string> = {
    costPerDay: "cost per day",
    perDay: "per day",
    perWeek: "per week",
  };
  const said = words[what] ?? what;
  const of1 = what === "lag" && on?.[0] !== undefined ? ` after ${on[0].name}` : "";
  return `${of.name}: ${said}${of1}`;
}

function unitText({ unit }: FutureDraw, value: number): string {
  if (unit === "money") return groupDigits(Math.round(value));
  const digits = groupDigits(value, Math.abs(value) < 100 ? 1 : 0);
  return unit === "times" ? `× ${groupDigits(value, 2)}` : unit === "quantity" ? digits : `${digits} ${unit}`;
}
