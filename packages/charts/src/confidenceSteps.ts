import type { Confidence, ConfidenceStep } from "@leeway/core";
import { drawSteps, type StepPanel } from "./confidence/drawSteps.ts";
import { stepsFinding } from "./confidence/stepsFinding.ts";
import { dayMs, isoToMs } from "./dates/dayToIso.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { levelsSpend } from "./sentences/speaksOfMoney.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { roundSignificant } from "./words/roundSignificant.ts";
import { limitStep, roundToStep } from "./words/roundToLimits.ts";

/**
 * Why this confidence: for every level the date and the sum that hold it, as bars from the plan as written, and
 * what lateness is still to be expected beyond, where the plan prices it. The level committed to is marked. A plan
 * without money is drawn in dates alone.
 *
 * Reads `steps`, `stop`, `asWritten`, `confidence`, `plan`, `lateness`, `joint.asked`.
 */
export function confidenceSteps(answer: Confidence, options: ChartOptions): Figure {
  const { steps, asWritten, confidence, plan, stop } = answer;
  const priced = steps.some((step) => step.latenessLeft !== undefined);
  const spends = levelsSpend(answer);
  const sum = roundedSums(steps);
  const money = (value: number) => formatMoney(roundSignificant(value, 2), "");
  const signed = (value: number) => formatMoney(roundSignificant(value, 2), "", true);
  const day = (iso: string) => (isoToMs(iso) - isoToMs(plan.start)) / dayMs + 1;
  const panels: StepPanel[] = [
    {
      heading: "Finish by",
      base: asWritten.day,
      written: `as written ${formatDate(asWritten.date)}`,
      values: steps.map((step) => ({
        at: step.day,
        // Limits on one date are none: they are days, and the level is a moment of one.
        ...(step.lowDate === step.highDate
          ? {}
          : { low: Math.min(step.day, day(step.lowDate)), high: Math.max(step.day, day(step.highDate)) }),
        text: formatDate(step.date),
      })),
    },
  ];
  if (spends)
    panels.push({
      heading: `Costs at most, ${plan.currency}`,
      base: asWritten.cost,
      written: `as written ${sum(asWritten.cost)}`,
      values: steps.map((step) => ({
        at: step.cost,
        low: step.costLow,
        high: step.costHigh,
        text: sum(step.cost),
      })),
    });
  if (priced)
    panels.push({
      heading: `Lateness left, ${plan.currency}`,
      base: 0,
      values: steps.map(({ latenessLeft = 0 }) => ({ at: latenessLeft, text: money(latenessLeft) })),
    });
  const title = stepsFinding(answer);
  const rows = steps.map((step) => ({
    name: formatPercent(step.p),
    word: [step.p === confidence ? "committed" : "", step.p === stop?.p ? "pays up to here" : ""]
      .filter((word) => word !== "")
      .join(", "),
    committed: step.p === confidence,
  }));
  const columns = [
    { name: "Level", align: "start" as const },
    { name: "Finish by", align: "end" as const },
    { name: "Limits", align: "end" as const },
    ...(spends ? [{ name: "Costs at most", unit: plan.currency, align: "end" as const }] : []),
    { name: "The step takes", unit: "working days", align: "end" as const },
    ...(spends ? [{ name: "The step takes", unit: plan.currency, align: "end" as const }] : []),
    ...(priced
      ? [
          { name: "It avoids in lateness", unit: plan.currency, align: "end" as const },
          { name: "Lateness left", unit: plan.currency, align: "end" as const },
          { name: "Worth it", align: "start" as const },
        ]
      : []),
  ];
  return {
    title,
    subtitle: `What each level of confidence takes, from the plan as written on${priced ? ", and the lateness still to be expected beyond its date" : ""}; whiskers: 95 % sampling limits`,
    summary: summary(answer, spends ? sum : undefined, priced),
    table: {
      columns,
      rows: steps.map((step) => [
        formatPercent(step.p),
        formatDate(step.date, "weekday"),
        step.lowDate === step.highDate
          ? formatDate(step.lowDate)
          : `${formatDate(step.lowDate)} to ${formatDate(step.highDate)}`,
        ...(spends ? [sum(step.cost)] : []),
        step.bought === undefined ? "" : columnDays(step.bought.workingDays, true),
        ...(spends ? [step.bought === undefined ? "" : signed(step.bought.money)] : []),
        ...(priced
          ? [
              step.avoided === undefined ? "" : money(step.avoided),
              step.latenessLeft === undefined ? "" : money(step.latenessLeft),
              step.worthIt === undefined ? "" : step.worthIt ? "yes" : "no",
            ]
          : []),
      ]),
    },
    svg: steps.length === 0 ? emptyDrawing("No level was tried.", options) : drawSteps(rows, panels, options),
  };
}

/** All sums end on the same place: the coarsest that the limits of any step ask for. */
function roundedSums(steps: readonly ConfidenceStep[]): (value: number) => string {
  let place = 0;
  for (const { cost, costLow, costHigh } of steps)
    place = Math.max(place, limitStep(cost, costLow, costHigh));
  return (value) => formatMoney(roundToStep(value, place), "");
}

function summary(
  { steps, plan, confidence, missing }: Confidence,
  sum: ((value: number) => string) | undefined,
  priced: boolean,
): string {
  const [first, last] = [steps[0], steps[steps.length - 1]];
  if (first === undefined || last === undefined) return "No level of confidence has been tried.";
  const say = (step: ConfidenceStep) =>
    `${formatPercent(step.p)} takes ${formatDate(step.date)}${sum === undefined ? "" : ` and ${plan.currency} ${sum(step.cost)}`}`;
  const own = steps.find((step) => step.p === confidence);
  const said = [...new Set([first, own ?? first, last])].map(say).join("; ");
  const left =
    own?.latenessLeft === undefined
      ? ""
      : ` Beyond the committed date, lateness of ${formatMoney(roundSignificant(own.latenessLeft, 2), plan.currency)} is still to be expected.`;
  return `Bars for ${steps.length === 1 ? "one level" : `${steps.length} levels`} of confidence: ${said}.${left}${priced ? "" : ` ${missing ?? "The plan does not price lateness."}`}`;
}
