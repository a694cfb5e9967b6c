import { formatChance, formatDate, formatPercent } from "@leeway/charts";
import type { Confidence, JointPair } from "@leeway/core";
import { bareSum, spendsMoney, sumAt } from "./confidenceMoney.ts";
import { type Column, table, wrap } from "./page.ts";

/** Where between the wanted chance and certainty the pairs of the table lie, by the date's own chance. */
const PLACES = [0.05, 0.25, 0.45, 0.65, 0.85];

/** A few of the pairs, the dates spread over those that matter. */
function chosen(pairs: readonly JointPair[], joint: number): JointPair[] {
  const picked = PLACES.map((place) => {
    const wanted = joint + (1 - joint) * place;
    return pairs.reduce((best, pair) =>
      Math.abs(pair.finishLevel - wanted) < Math.abs(best.finishLevel - wanted) ? pair : best,
    );
  });
  return pairs.filter((pair) => picked.includes(pair));
}

/** How strongly dear futures are late ones, in words. */
function together(correlation: number): string {
  if (Math.abs(correlation) < 0.05) return "Late futures are no dearer than others";
  const how =
    Math.abs(correlation) < 0.3 ? "a little" : Math.abs(correlation) < 0.7 ? "clearly" : "nearly always";
  return correlation > 0 ? `Late futures are ${how} dearer ones` : `Late futures are ${how} cheaper ones`;
}

/** Where many futures share one date and sum, the smallest level that has them says less than what they keep. */
function levelOfEach({ level, joint, both }: Confidence["joint"]["equal"]): string {
  return level < joint
    ? `: they hold in ${formatPercent(both)}`
    : `: the ${formatPercent(level)} level of each`;
}

/** The chance of keeping date and sum at once, what it takes to have the wanted one, and pairs that share it. */
export function jointLines(confidence: Confidence, width: number): string[] {
  const { joint, committed } = confidence;
  if (!spendsMoney(confidence)) return [];
  const { equal, frontier, asked } = joint;
  const level = formatPercent(confidence.confidence);
  const sentences = [
    `${formatDate(committed.date, "long")} and ${sumAt(confidence, committed.cost)} hold ${level} each, both ` +
      `together ${formatPercent(joint.atCommitted)}. ${together(joint.correlation)} (correlation ` +
      `${joint.correlation.toFixed(2).replace("-", "−")}).`,
    `For both together ${formatChance(equal.joint)}, promise ${formatDate(equal.date, "long")} and ` +
      `${sumAt(confidence, equal.cost)}${levelOfEach(equal)}.`,
    ...(asked === undefined
      ? []
      : [
          `You asked for ${formatDate(asked.date, "long")} and ${sumAt(confidence, asked.cost)}: ` +
            `${formatPercent(asked.finishLevel)} by that day, ${formatPercent(asked.costLevel)} within that sum, ` +
            `${formatPercent(asked.both)} both.`,
        ]),
  ];
  const columns: Column[] = [
    { heading: "finish by", align: "left" },
    { heading: "alone", align: "right" },
    { heading: `with ${confidence.plan.currency}`, align: "right" },
    { heading: "alone", align: "right" },
  ];
  const rows = chosen(frontier.pairs, frontier.joint).map((pair) => [
    formatDate(pair.date, "weekday"),
    formatPercent(pair.finishLevel),
    bareSum(confidence, pair.cost),
    formatPercent(pair.costLevel),
  ]);
  return [
    "Date and money together",
    ...sentences.flatMap((sentence) => wrap(sentence, width - 2).map((line) => `  ${line}`)),
    "",
    ...wrap(
      `Pairs that hold together ${formatChance(frontier.joint)}; take one whole, not parts of two`,
      width,
    ),
    ...table(columns, rows),
  ];
}
