import { formatPercent } from "@leeway/charts";
import type { Proportion, Score, Scorecard, ScoreEntry } from "@leeway/core";
import type { AdjustedScenario } from "../verbs/scorecard.ts";
import { adjustedScenarioLines } from "./adjustedText.ts";
import { amount } from "./amountWords.ts";
import { type Column, type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";

const times = (factor: number) => `${factor.toFixed(2)} times`;

/**
 * Past estimates against what happened, as a person reads it: how many held, each estimator, each task, what that
 * suggests, and what it cannot say. Every figure is the library's own.
 */
export function scorecardText(given: Scorecard, scenario: AdjustedScenario | undefined, page: Page): string {
  const card = plainTexts(given);
  const { width, strong } = page;
  const plans = card.plans.map(
    ({ title, versions }) => `${title}${versions > 1 ? ` (${versions} versions)` : ""}`,
  );
  const { overall } = card;
  const blocks: string[][] = [
    [strong("Estimates against what happened"), ...wrap(`Read: ${plans.join("; ")}.`, width)],
    overall === undefined
      ? wrap(
          "No finished task has a range of time to score. Record what finishes; estimate as a range.",
          width,
        )
      : sentences(overall).flatMap((sentence, k) =>
          wrap(sentence, width).map(k === 0 ? strong : (line) => line),
        ),
    peopleLines(card, width),
    entryLines(card, width),
    moneyLines(card, width),
    overall === undefined ? [] : cautionLines(overall, card, width),
    overall === undefined ? [] : adjustmentLines(overall, width),
    scenario === undefined ? [] : adjustedScenarioLines(scenario, page),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function shareWords({ k, n, share, low, high }: Proportion): string {
  return `${k} of ${n} (${formatPercent(share)}, limits ${formatPercent(low)} to ${formatPercent(high)})`;
}

const RANGES: Record<Score["ranges"], string> = {
  "too-few": "Too few to judge the ranges by.",
  "too-narrow": "The ranges are too narrow: even the upper limit is below 8 in 10.",
  "too-wide": "The ranges are wider than needed: even the lower limit is above 8 in 10.",
  "as-meant": "That does not contradict 8 in 10, which is what such ranges are meant to hold.",
};

function sentences(score: Score): string[] {
  const { inside, below, above, ranges, medianRatio, meanRatio, medianOfMedian } = score;
  const leaning =
    score.n < 3 || Math.abs(medianOfMedian - 1) < 0.05
      ? "neither way"
      : medianOfMedian > 1
        ? "to the short side"
        : "to the long side";
  return [
    `Inside their one-in-ten range: ${shareWords(inside)}; ${below} below it, ${above} above. ${RANGES[ranges]}`,
    `What happened was ${times(medianRatio)} the likely value in the middle case and ${times(meanRatio)} on average; ` +
      `against the median of what was said, ${times(medianOfMedian)}: estimates leaned ${leaning}.`,
  ];
}

function peopleLines({ people }: Scorecard, width: number): string[] {
  if (people.length === 0) return [];
  const columns: Column[] = [
    { heading: "estimator", align: "left" },
    { heading: "inside", align: "right" },
    { heading: "limits, 95 %", align: "left" },
    { heading: "below", align: "right" },
    { heading: "above", align: "right" },
    { heading: "actual/likely", align: "right" },
  ];
  const rows = people.map(({ name, score }) => [
    name,
    `${score.inside.k} of ${score.n}`,
    `${formatPercent(score.inside.low)} to ${formatPercent(score.inside.high)}`,
    String(score.below),
    String(score.above),
    Number.isFinite(score.medianRatio) ? score.medianRatio.toFixed(2) : "",
  ]);
  return ["By estimator (actual/likely: the middle case)", ...table(columns, rows, width)];
}

const WHERE = { inside: "inside", below: "below", above: "above" } as const;

function entryLines({ entries }: Scorecard, width: number): string[] {
  const timed = entries.filter(({ of }) => of === "duration");
  return timed.length === 0 ? [] : ["Task by task, in working days", ...entryTable(timed, width)];
}

function entryTable(entries: readonly ScoreEntry[], width: number): string[] {
  const columns: Column[] = [
    { heading: "task", align: "left" },
    { heading: "1 in 10 below", align: "right" },
    { heading: "likely", align: "right" },
    { heading: "1 in 10 above", align: "right" },
    { heading: "actual", align: "right" },
    { heading: "", align: "left" },
  ];
  const rows = entries.map((entry) => [
    entry.name,
    amount(entry.p10),
    amount(entry.likely),
    amount(entry.p90),
    amount(entry.actual),
    `${WHERE[entry.where]}${entry.within ? ", by less than a day" : ""}${entry.events.length > 0 ? " *" : ""}`,
  ]);
  const touched = entries.some(({ events }) => events.length > 0);
  return [
    ...table(columns, rows, width),
    ...(touched ? wrap("  * something of the register occurred and touched it", width) : []),
  ];
}

function moneyLines({ entries, money }: Scorecard, width: number): string[] {
  if (money === undefined) return [];
  const priced = entries.filter(({ of }) => of === "cost");
  return [
    ...wrap(`Costs inside their range: ${shareWords(money.inside)}.`, width),
    ...entryTable(priced, width),
  ];
}

function cautionLines(score: Score, { unscored }: Scorecard, width: number): string[] {
  const { n, within, withEvents } = score;
  const notes = [
    ...(n < 30
      ? [
          `${n === 1 ? "One task is" : `${n} tasks are`} few: read the limits, not the share, and rank nobody by it.`,
        ]
      : []),
    ...(within > 0
      ? [`Days are recorded whole, so ${within} of those outside by less than a day may as well be inside.`]
      : []),
    ...(withEvents > 0
      ? [
          `${withEvents} of them were touched by something in the register that occurred: a range of the work alone is not meant to hold that.`,
        ]
      : []),
    ...(unscored.length > 0
      ? [
          `Not scored, having no range or no day of start: ${unscored
            .map(({ task }) => task)
            .slice(0, 12)
            .join(", ")}.`,
        ]
      : []),
    "Limits are Wilson's (1927) at 95 %; tasks that share a cause are less than independent, so they are narrower than they should be.",
  ];
  return notes.flatMap((note) => wrap(`Note: ${note}`, width, "  "));
}

function adjustmentLines({ adjustment, n }: Score, width: number): string[] {
  if (adjustment === undefined) {
    return wrap(`An adjustment is suggested from 10 finished tasks with ranges on; there are ${n}.`, width);
  }
  const { shift, highSide, lowSide } = adjustment;
  return wrap(
    `What would have made them right: all values ${times(shift)} as large, then the high side ${times(highSide)} as ` +
      `long and the low side ${times(lowSide)}. It is applied to nothing; --apply-to PLAN shows what it would do.`,
    width,
  );
}
