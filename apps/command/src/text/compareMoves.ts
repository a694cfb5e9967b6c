import { columnDays, groupDigits, hasSums, roundMove } from "@leeway/charts";
import type { Comparison, Effect } from "@leeway/core";
import { wrap } from "./page.ts";

/** Changes of one move, and of those that moved nothing, that are spelled out. */
const shown = 8;

/** Each move with its days and money before its sentence, and the sum of all. */
export function moveLines(comparison: Comparison, width: number): string[] {
  const { moves, difference, plan } = comparison;
  if (moves.length === 0) return [];
  const money = hasSums(comparison);
  const cells = (effect: Effect) => [
    columnDays(effect.workingDays, true),
    ...(money ? [signed(roundMove(effect.money))] : []),
  ];
  const rows = [...moves.map((move) => cells(move)), cells(difference)];
  const headings = ["days", ...(money ? [plan.currency] : [])];
  const widths = headings.map((heading, k) =>
    Math.max(...[heading, ...rows.map((row) => row[k] ?? "")].map((text) => text.length)),
  );
  const figures = (row: readonly string[]) =>
    `  ${row.map((text, k) => text.padStart(widths[k] ?? 0)).join("  ")}  `;
  const blank = " ".repeat(figures(headings).length);
  const room = width - blank.length;
  const lines = moves.flatMap(({ what, changes }, at) => {
    const [first = "", ...more] = wrap(what, room);
    const row = rows[at] ?? [];
    return [
      figures(row) + first,
      ...more.map((line) => blank + line),
      ...details(changes, what, room).map((line) => blank + line),
    ];
  });
  const total = rows[rows.length - 1] ?? [];
  return ["What moved it", figures(headings).trimEnd(), ...lines, `${figures(total)}in all`];
}

function signed(value: number): string {
  return value > 0 ? `+${groupDigits(value)}` : groupDigits(value);
}

/** Changes that the sentence of a move only counts. */
function details(changes: readonly string[], what: string, width: number): string[] {
  const untold = changes.filter((change) => !what.includes(change.slice(change.indexOf(": ") + 1).trim()));
  const rest = untold.length > shown ? [`and ${untold.length - shown} more`] : [];
  return [...untold.slice(0, shown), ...rest].flatMap((change) => wrap(`- ${change}`, width, "  "));
}

/** What changed without moving date or sum. */
export function alsoLines(comparison: Comparison, width: number): string[] {
  const { alsoChanged } = comparison;
  if (alsoChanged.length === 0) return [];
  const rest = alsoChanged.length > shown ? [`  and ${alsoChanged.length - shown} more`] : [];
  return [
    `Changed too, without moving ${hasSums(comparison) ? "date or sum" : "the date"}`,
    ...alsoChanged.slice(0, shown).flatMap((text) => wrap(text, width - 2, "  ").map((line) => `  ${line}`)),
    ...rest,
  ];
}
