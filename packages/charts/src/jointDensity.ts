import type { Confidence, JointPair } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { drawJoint, type JointMark } from "./joint/drawJoint.ts";
import { formatChance } from "./words/formatChance.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { roundSignificant } from "./words/roundSignificant.ts";
import { limitStep, roundToStep } from "./words/roundToLimits.ts";

/**
 * Date and sum together: all futures as a density by day and cost, the committed pair, the pair asked for, and the
 * curve of pairs that hold the wanted chance of both, with the one of equal levels on it.
 *
 * Reads `joint`, `plan`, and of `steps` the limits of the committed sum. Counts on a grid, never the single futures: under 1,300 elements.
 */
export function jointDensity(answer: Confidence, options: ChartOptions): Figure {
  const { joint, plan } = answer;
  const { committed, asked, equal, frontier } = joint;
  const figures = roundedSum(answer);
  const sum = (value: number) => formatMoney(figures(value), plan.currency);
  const wanted = formatPercent(equal.joint);
  const each = formatPercent(equal.level);
  // Many futures on one date and sum: the smallest level that has them says less than what they keep.
  const tied = equal.level < equal.joint;
  const words = (pair: JointPair) =>
    `${formatDate(pair.date)} · ${sum(pair.cost)} · both ${formatPercent(pair.both)}`;
  const marks: JointMark[] = [
    {
      level: "committed",
      title: "Committed",
      detail: words(committed),
      day: committed.day,
      cost: committed.cost,
    },
  ];
  if (asked !== undefined)
    marks.push({
      level: "asked",
      title: "Asked for",
      detail: words(asked),
      day: asked.day,
      cost: asked.cost,
    });
  const apart = equal.day !== committed.day || equal.cost !== committed.cost;
  if (apart)
    marks.push({
      level: "half",
      title: `Each at ${each}`,
      detail: `${formatDate(equal.date)} · ${sum(equal.cost)} · both ${formatPercent(equal.both)}`,
      day: equal.day,
      cost: equal.cost,
    });
  const both = formatPercent(joint.atCommitted);
  const futures = groupDigits(joint.stamp.iterations);
  const title = apart
    ? `The committed date and sum hold together in ${both} of futures; to hold both in ${wanted} takes ${formatDate(equal.date)} and ${sum(equal.cost)}`
    : `The committed date and sum hold together in ${both} of futures`;
  const pair = (
    name: string,
    at: JointPair | (typeof equal & { finishLevel: number; costLevel: number }),
  ) => [
    name,
    formatDate(at.date, "weekday"),
    formatMoney(figures(at.cost), ""),
    formatPercent(at.finishLevel),
    formatPercent(at.costLevel),
    formatPercent(at.both),
  ];
  return {
    title,
    subtitle: `${futures} futures by finish and cost: the strongest tint holds half of them, with the next one 80 %; the line: pairs that hold both in ${wanted}`,
    summary: `A density of futures by finish and cost, whose correlation is ${groupDigits(joint.correlation, 2)}. The committed pair, ${formatDate(committed.date, "long")} and ${sum(committed.cost)}, holds ${formatChance(committed.both)}${asked === undefined ? "" : `; the pair asked for, ${formatDate(asked.date)} and ${sum(asked.cost)}, ${formatChance(asked.both)}`}. A line joins the pairs that hold both in ${wanted} of futures; ${tied ? `on it both hold in ${formatPercent(equal.both)}` : `on it each level is ${each}`} at ${formatDate(equal.date)} and ${sum(equal.cost)}.`,
    table: {
      columns: [
        { name: "Pair", align: "start" },
        { name: "Finish by", align: "end" },
        { name: "Costs at most", unit: plan.currency, align: "end" },
        { name: "Date alone", align: "end" },
        { name: "Sum alone", align: "end" },
        { name: "Both", align: "end" },
      ],
      rows: [
        pair("Committed", committed),
        ...(asked === undefined ? [] : [pair("Asked for", asked)]),
        pair("Equal levels", { ...equal, finishLevel: equal.level, costLevel: equal.level }),
        ...spread(frontier.pairs).map((at) => pair(`Holds both in ${wanted}`, at)),
      ],
    },
    svg: drawJoint({ ...plan, joint, marks, curve: `both ${wanted}` }, options),
  };
}

/** Sums to the place the limits of the committed one support, else to three significant digits. */
function roundedSum({ steps, confidence }: Confidence): (value: number) => number {
  const own = steps.find((step) => step.p === confidence);
  if (own === undefined) return (value) => roundSignificant(value, 3);
  const place = limitStep(own.cost, own.costLow, own.costHigh);
  return (value) => roundToStep(value, place);
}

/** At most nine pairs, evenly along the curve: enough for a table. */
function spread(pairs: readonly JointPair[]): JointPair[] {
  const most = 9;
  if (pairs.length <= most) return [...pairs];
  return Array.from(
    { length: most },
    (_, k) => pairs[Math.round((k * (pairs.length - 1)) / (most - 1))],
  ).filter((pair) => pair !== undefined);
}
