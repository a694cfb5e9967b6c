import { formatPercent } from "@leeway/charts";
import type { Budget, Component } from "@leeway/core";
import { sumsOf } from "./budgetSums.ts";
import { type Column, table, wrap } from "./page.ts";

const names: Record<Component["kind"], string> = {
  spent: "Spent so far",
  "task-cost": "Task costs, once",
  "task-per-day": "Task costs by the day",
  people: "People",
  risks: "Risks and assumptions",
  responses: "Responses",
  overheads: "Overheads",
};
const right = (heading: string): Column => ({ heading, align: "right" });

/** What the money is for: by component, then by phase; the last column adds up. */
export function componentLines(budget: Budget, width: number): string[][] {
  const { components, phases, total, addedUp, plan, confidence } = budget;
  const { column, say, statedColumn, together } = sumsOf(budget);
  const level = formatPercent(confidence);
  const part = `of ${column(total.committed)}`;
  const splits = together(components.map(({ split }) => split));
  const head = [
    { heading: "", align: "left" } as Column,
    right("as written"),
    right("mean"),
    right("P50"),
    right("P80"),
    right(part),
  ];
  const rows = components.map(({ kind, asWritten, mean, p50, p80 }, i) => [
    names[kind],
    statedColumn(asWritten),
    ...[mean, p50, p80].map(column),
    splits[i] ?? "",
  ]);
  const whole = [
    "Together",
    statedColumn(total.asWritten),
    ...[total.mean, total.p50, total.p80, total.committed].map(column),
  ];
  const phaseSplits = together(phases.map(({ split }) => split));
  const phaseRows = phases.map(({ phase, mean, p50, p80 }, i) => [
    phase ?? "Of no phase",
    ...[mean, p50, p80].map(column),
    phaseSplits[i] ?? "",
  ]);
  const gap = Math.abs(addedUp.p80 - total.p80) > Math.abs(total.p80) * 0.002;
  const added = gap
    ? ` Added up, the P80s above would make ${say(addedUp.p80)}; the P80 of the whole is ${say(total.p80)}.`
    : "";
  return [
    [`What the money is for, ${plan.currency}`, ...table(head, [...rows, whole], width)],
    wrap(
      `P50 and P80 are those of each line alone and do not add up.${added} The last column adds up: it divides the ` +
        `${say(total.committed)} of the ${level} level into what each line comes to, on average, in futures that cost about that much.`,
      width,
    ),
    ...(phases.length > 1
      ? [
          [
            `By phase, ${plan.currency}`,
            ...table(
              [head[0] as Column, right("mean"), right("P50"), right("P80"), right(part)],
              phaseRows,
              width,
            ),
          ],
        ]
      : []),
  ];
}
