import { formatPercent, groupDigits } from "@leeway/charts";
import type { PlanMeasure } from "@leeway/core";
import { inset } from "./inset.ts";
import { type Column, table, wrap } from "./page.ts";

const columns: Column[] = [
  { heading: "measure", align: "left" },
  { heading: "here", align: "right" },
  { heading: "threshold", align: "left" },
];

/** The trade's measures, each beside its threshold; what falls outside asks its question. */
export function measureLines(measures: readonly PlanMeasure[], width: number): string[] {
  const taken = measures.filter(({ value }) => value !== undefined);
  const asked = taken.filter(({ within }) => within === false);
  return [
    ...wrap("Measures of the plan as written. Thresholds prompt questions; they are no verdict.", width),
    ...table(
      columns,
      taken.map((measure) => [measure.name, here(measure), threshold(measure)]),
      width,
    ),
    ...asked.flatMap(({ name, question }) => inset(`${name}: ${question}`, width)),
    ...notTaken(measures, width),
  ];
}

function here({ value = 0, unit, count, of }: PlanMeasure): string {
  if (unit === "working days") return `${groupDigits(Math.round(value))} days`;
  const counted = count === undefined || of === undefined ? "" : `${count} of ${of}: `;
  return unit === "share"
    ? `${counted}${formatPercent(value)}`
    : unit === "ratio"
      ? ratio(value)
      : `${value}`;
}

/** Two decimals, and a third where two would hide on which side of the threshold it lies. */
function ratio(value: number): string {
  return value.toFixed(Math.abs(value - 0.95) < 0.005 ? 3 : 2);
}

function threshold({ threshold: limit, bound, unit, within }: PlanMeasure): string {
  const value = unit === "share" ? formatPercent(limit) : `${limit}${unit === "working days" ? " days" : ""}`;
  const said = limit === 0 ? "none" : `${bound} ${value}`;
  return within === false ? `${said} ?` : said;
}

function notTaken(measures: readonly PlanMeasure[], width: number): string[] {
  const reasons = new Map<string, string[]>();
  for (const { name, reason } of measures) {
    if (reason !== undefined) reasons.set(reason, [...(reasons.get(reason) ?? []), name.toLowerCase()]);
  }
  return [...reasons].flatMap(([reason, names]) =>
    inset(`Not measured, ${reason}: ${names.join(", ")}.`, width),
  );
}
