import type { CostPercentile, Forecast } from "@leeway/core";
import { moneyUnit, roundTicks, tickLabels } from "./axes/roundTicks.ts";
import { type CurveMark, drawCurve } from "./curves/drawCurve.ts";
import { shareAt } from "./curves/interpolate.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { formatChance } from "./words/formatChance.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { limitStep, roundToStep } from "./words/roundToLimits.ts";

/**
 * The cost as a cumulative curve: the share of futures that cost at most each sum, with the level committed
 * to, the plan as written and the sum asked for. Marked as `finishCurve` marks dates.
 *
 * Reads `cost`, `committed`, `asWritten`, `asked`, `chance`. Cost: under 300 elements whatever the plan.
 */
export function costCurve(forecast: Forecast, options: ChartOptions): Figure {
  const { cost, committed, asWritten, asked } = forecast;
  const { currency } = forecast.plan;
  const half = cost.percentiles.find((each) => each.p === 0.5);
  const marks: CurveMark[] = [
    {
      level: "asWritten",
      value: asWritten.cost,
      chance: cost.asWrittenChance,
      title: "As written",
      detail: `${sum(forecast, asWritten.cost)} · ${formatPercent(cost.asWrittenChance)}`,
    },
  ];
  if (asked.budget !== undefined) {
    const chance = forecast.chance.budget ?? shareAt(cost.curve, asked.budget);
    marks.push({
      level: "asked",
      value: asked.budget,
      chance,
      title: "Asked for",
      detail: `${formatMoney(asked.budget, currency)} · ${formatPercent(chance)}`,
    });
  }
  if (half !== undefined && committed.confidence !== 0.5)
    marks.push({
      level: "half",
      value: half.value,
      chance: 0.5,
      title: "Half",
      detail: `${sum(forecast, half.value)} · 50 %`,
    });
  marks.push({
    level: "committed",
    value: committed.cost,
    chance: committed.confidence,
    title: "Committed",
    detail: `${sum(forecast, committed.cost)} · ${formatPercent(committed.confidence)}`,
  });
  const unit = moneyUnit(Math.max(...marks.map((mark) => Math.abs(mark.value))), currency);
  const svg = drawCurve(
    {
      curve: cost.curve,
      iterations: forecast.iterations,
      confidence: committed.confidence,
      marks,
      padding: Math.max(1, Math.abs(committed.cost) * 0.02),
      ticks: (from, to, width) => {
        const at = roundTicks(from, to, Math.floor(width / 84));
        const labels = tickLabels(at, unit.divisor);
        return at.map((each, k) => ({ at: each, label: labels[k] ?? "", below: k === 0 ? unit.name : "" }));
      },
      centred: true,
    },
    options,
  );
  return {
    title: finding(forecast, half),
    subtitle: subtitle(forecast, unit.name),
    summary: summary(forecast),
    table: {
      columns: [
        { name: "Level", align: "start" },
        { name: "Chance", align: "end" },
        { name: "Costs at most", unit: currency, align: "end" },
        { name: "Limits, low", unit: currency, align: "end" },
        { name: "Limits, high", unit: currency, align: "end" },
      ],
      rows: table(forecast),
    },
    svg,
  };
}

/** All sums of the chart end on the same place, the one the limits of the committed sum support. */
function sum({ committed, plan }: Forecast, value: number, currency = plan.currency): string {
  const step = limitStep(committed.cost, committed.costLow, committed.costHigh);
  return formatMoney(roundToStep(value, step), currency);
}

function finding(forecast: Forecast, half: CostPercentile | undefined): string {
  const { committed, cost } = forecast;
  const level = formatPercent(committed.confidence);
  const most = sum(forecast, committed.cost);
  const first = cost.curve.at[0];
  const last = cost.curve.at[cost.curve.at.length - 1];
  if (first !== undefined && first === last) return `Every future costs ${most}`;
  if (half === undefined || committed.confidence === 0.5)
    return `${level} of all futures cost at most ${most}`;
  const middle = sum(forecast, half.value);
  if (middle === most) return `Half of all futures, and ${level}, cost at most ${most}`;
  return committed.confidence > 0.5
    ? `Half of all futures cost at most ${middle}; ${level} at most ${most}`
    : `${level} of all futures cost at most ${most}; half at most ${middle}`;
}

function subtitle(forecast: Forecast, unit: string): string {
  const { cost, iterations } = forecast;
  const what = `Share of ${groupDigits(iterations)} futures that cost at most each sum, in ${unit}`;
  const p10 = cost.percentiles.find((each) => each.p === 0.1);
  const p90 = cost.percentiles.find((each) => each.p === 0.9);
  if (p10 === undefined || p90 === undefined || p10.value === p90.value) return what;
  return `${what}; the stronger tint, P10 to P90, runs from ${sum(forecast, p10.value)} to ${sum(forecast, p90.value)}`;
}

function summary(forecast: Forecast): string {
  const { cost, committed, asWritten, asked, plan } = forecast;
  const p10 = cost.percentiles.find((each) => each.p === 0.1);
  const p90 = cost.percentiles.find((each) => each.p === 0.9);
  const range =
    p10 === undefined || p90 === undefined
      ? "The curve shows the share of futures that cost at most each sum."
      : `A curve rising from one future in ten at ${sum(forecast, p10.value)} or less to nine in ten at ${sum(forecast, p90.value)} or less.`;
  const request =
    asked.budget === undefined
      ? ""
      : `; the sum asked for, ${formatMoney(asked.budget, plan.currency)}, holds ${formatChance(forecast.chance.budget ?? shareAt(cost.curve, asked.budget))}`;
  const written = sum(forecast, asWritten.cost);
  return `${range} Committed: ${sum(forecast, committed.cost)}; the plan as written says ${written} (${formatChance(cost.asWrittenChance)})${request}.`;
}

function table(forecast: Forecast): string[][] {
  const { cost, committed, asWritten, asked } = forecast;
  const rows = cost.percentiles.map(({ p, value, low, high }) => [
    p === committed.confidence ? "Committed" : "",
    formatPercent(p),
    ...[value, low, high].map((each) => sum(forecast, each, "")),
  ]);
  const written = sum(forecast, asWritten.cost, "");
  rows.push(["Plan as written", formatPercent(cost.asWrittenChance), written, "", ""]);
  if (asked.budget !== undefined) {
    const chance = forecast.chance.budget ?? shareAt(cost.curve, asked.budget);
    rows.push(["Asked for", formatPercent(chance), formatMoney(asked.budget, ""), "", ""]);
  }
  return rows;
}
