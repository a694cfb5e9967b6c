import type { Explanation, WalkStep } from "@leeway/core";
import { emptyDrawing } from "../draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "../figure/types.ts";
import type { Measure } from "../measure/types.ts";
import { drawWaterfall } from "../waterfall/drawWaterfall.ts";
import { standingFlags } from "../waterfall/standingFlags.ts";
import type { Fall } from "../waterfall/types.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { plainName, quoteName } from "../words/plainName.ts";

/** The figure both charts of the walk have in common; `measure` tells days from money. */
export function walkFigure(explanation: Explanation, measure: Measure, options: ChartOptions): Figure {
  const { walk, contingency } = explanation;
  const whole = measure.amount(contingency);
  const level = formatPercent(explanation.confidence);
  const flags = standingFlags(explanation, measure, level);
  const falls: Fall[] = walk.map((step, k) => ({
    id: `${k}`,
    name: step.step,
    word: "",
    tint: stepTint(step),
    value: measure.amount(step),
    error: 0,
  }));
  const sentences = walk.map((step) => `${plainName(step.step)} ${measure.column(measure.amount(step))}`);
  return {
    title: finding(falls, whole, measure, level),
    subtitle: `From the plan as written to the ${level} commitment, in ${measure.unit}: each step adds to those above it, so another order would divide them otherwise`,
    summary:
      walk.length === 0
        ? "This explanation holds no steps from the plan as written to the commitment."
        : `A waterfall from the plan as written, ${flags.from.detail}, to the commitment, ${flags.to.detail}. In ${measure.unit}: ${sentences.join(", ")}.`,
    table: {
      columns: [
        { name: "Step", align: "start" },
        { name: "Adds", unit: measure.unit, align: "end" },
        { name: "So far", unit: measure.unit, align: "end" },
        { name: "What it is", align: "start" },
      ],
      rows: [
        ...walk.map((step, k) => [
          plainName(step.step),
          measure.column(measure.amount(step)),
          measure.column(walk.slice(0, k + 1).reduce((sum, each) => sum + measure.amount(each), 0)),
          plainName(step.text),
        ]),
        ["Contingency", measure.column(whole), measure.column(whole), ""],
      ],
    },
    svg:
      walk.length === 0
        ? emptyDrawing("No steps to draw.", options)
        : drawWaterfall({ falls, ...flags, total: { name: "Contingency", value: whole }, measure }, options),
  };
}

/** Steps of the register are plum and those of people outlined, as in the chart of shares. */
function stepTint({ kind }: WalkStep): Fall["tint"] {
  return kind === "register" || kind === "people" ? kind : "range";
}

function finding(falls: readonly Fall[], whole: number, measure: Measure, level: string): string {
  const { say, least, what, more, less } = measure;
  const real = falls.filter((fall) => Math.abs(fall.value) >= least);
  const first = [...real].sort((a, b) => Math.abs(b.value) - Math.abs(a.value))[0];
  const ends = `the ${level} ${what}`;
  if (Math.abs(whole) < least)
    return first === undefined
      ? `Nothing lies between the plan as written and ${ends}`
      : `Steps cancel out: ${ends} is that of the plan as written`;
  const size = `${say(whole)} ${what === "sum" ? (whole < 0 ? "less" : "more") : whole < 0 ? less : more}`;
  const start = `${ends.charAt(0).toUpperCase()}${ends.slice(1)} is ${size} than the plan as written`;
  if (first === undefined) return start;
  if (real.length === 1) return `${start}, all of it by one step: ${quoteName(first.name)}`;
  const by = say(first.value);
  const way = first.value < 0 === whole < 0 ? "" : ` ${first.value < 0 ? less : more}`;
  return `${start}; the largest step is ${quoteName(first.name)}, ${by}${way}`;
}
