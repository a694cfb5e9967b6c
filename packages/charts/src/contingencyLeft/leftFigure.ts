import type { ContingencyLeft, ExposureAhead } from "@leeway/core";
import { dayMs, isoToMs } from "../dates/dayToIso.ts";
import { emptyDrawing } from "../draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "../figure/types.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { drawLeft } from "./drawLeft.ts";
import { leftFinding } from "./leftFinding.ts";
import type { LeftMeasure } from "./leftMeasure.ts";

/** Contingency left against the exposure ahead, in one measure. */
export function leftFigure(answer: ContingencyLeft, measure: LeftMeasure, options: ChartOptions): Figure {
  const { plan, ahead, confidence } = answer;
  const { cover, amount, say, column, unit } = measure;
  const title = leftFinding(answer, measure);
  const steps = ahead.map(({ date, exposure }) => ({
    // The end of that day.
    day: (isoToMs(date) - isoToMs(plan.start)) / dayMs + 1,
    value: amount(exposure),
  }));
  const some = steps.some(({ value }) => Math.abs(value) > 1e-9);
  return {
    title,
    subtitle: `What may be needed beyond the plan as written in ${formatPercent(confidence)} of futures, after each month, if until then all goes as written${cover === undefined ? "" : "; line: contingency left today"}. In ${unit}`,
    summary: `A staircase that falls from ${say(steps[0]?.value ?? 0)} to nothing as work ends and windows of risks close${cover === undefined ? "" : `, against ${say(cover.left)} left`}. ${title}.`,
    table: {
      columns: [
        { name: "After", align: "start" },
        { name: "May be needed", unit, align: "end" },
        { name: "Settled since the line before", align: "start" },
      ],
      rows: ahead.map((point, i) => [
        formatDate(point.date),
        column(amount(point.exposure)),
        i === 0 ? "as things stand" : settledWords(point),
      ]),
    },
    svg:
      steps.length < 2 || !some
        ? emptyDrawing("Nothing uncertain remains.", options)
        : drawLeft(
            {
              start: plan.start,
              unit,
              money: measure.what === "sum",
              steps,
              ...(cover === undefined ? {} : { left: cover.left }),
              say: (value) => (measure.what === "sum" ? column(value) : say(value)),
            },
            options,
          ),
  };
}

function settledWords({ settles }: ExposureAhead): string {
  const { work, register } = settles;
  const parts = [
    ...(register.length === 0 ? [] : [register.join(", ")]),
    ...(work.length === 0 ? [] : [work.length === 1 ? "1 task or rate" : `${work.length} tasks and rates`]),
  ];
  return parts.length === 0 ? "nothing" : parts.join("; ");
}
