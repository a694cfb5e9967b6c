import type { PreBrief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { groupDigits } from "../../words/groupDigits.ts";
import { roundSignificant } from "../../words/roundSignificant.ts";
import { chanceWords, monthWords, rough, stated, supported } from "../says.ts";
import { text } from "../sheet/build.ts";
import type { Block } from "../sheet/types.ts";

const shown = 8;

/** The sum against the budget, and month by month against the money released. */
export function affordAnswer({ brief, figures }: PreBrief): Block[] {
  const { commitment } = brief;
  const { asked, chance, reserve } = commitment;
  const budget =
    asked.budget === undefined || chance.budget === undefined
      ? "The plan names no budget."
      : `The budget of ${stated(brief, asked.budget)} holds ${chanceWords(chance.budget)}; ${formatPercent(brief.confidence)} needs ${supported(brief, commitment.committed.cost)}.`;
  const apart =
    reserve === undefined
      ? "No reserve is stated."
      : `The reserve of ${stated(brief, reserve)} is apart and untouched by these figures.`;
  const months = figures.months.filter(({ released }) => released !== undefined);
  if (months.length === 0)
    return [
      text(`${budget} ${apart} The plan does not say when money is released, so months cannot be told.`),
    ];
  const { firstShortfall } = commitment;
  const level = formatPercent(brief.confidence);
  const short =
    firstShortfall === undefined
      ? `What is released covers every month in at least ${level} of futures.`
      : `What is released first falls short of ${level} in ${monthWords(firstShortfall.month)}.`;
  const step = Math.max(1, Math.ceil(months.length / shown));
  const kept = months.filter(
    ({ month }, at) => at % step === step - 1 || at === months.length - 1 || month === firstShortfall?.month,
  );
  const end = (name: string) => ({ text: name, align: "end" as const });
  const sum = (value: number) => groupDigits(roundSignificant(value, 3));
  return [
    text(`${budget} ${apart} ${short}`),
    {
      kind: "table",
      caption: `Cost by the end of a month against money released, ${brief.plan.currency}`,
      head: [
        { text: "By the end of", align: "start" },
        end("half of futures at most"),
        end("8 of 10 at most"),
        end("released"),
        end("covered"),
      ],
      rows: kept.map(({ month, cumulative, released = 0, chanceCovered }) => ({
        cells: [
          monthWords(month, 3),
          sum(cumulative.p50),
          sum(cumulative.p80),
          groupDigits(released),
          chanceCovered === undefined ? "" : formatPercent(chanceCovered),
        ],
      })),
    },
  ];
}

/** What being late does to the organisation, counted once. */
export function slipAnswer({ brief }: PreBrief): Block[] {
  const { lateness } = brief.worth;
  const { perMonth } = brief.recommendation.doNothing;
  const forgone =
    perMonth === undefined
      ? ""
      : ` Benefits come later too: ${rough(brief, perMonth)} a month in full, as written; where the price of lateness already holds them, they are not to be counted again.`;
  if (lateness === undefined) return [text(`The plan does not say what finishing late costs.${forgone}`)];
  return [
    text(
      `After ${formatDate(lateness.after, "short")} each week costs ${rough(brief, lateness.perWeek)}${
        lateness.once === 0 ? "" : `, and being late at all ${rough(brief, lateness.once)} once`
      }. It is late ${chanceWords(lateness.chance)}; that is ${rough(brief, lateness.mean)} on average over all futures, ${rough(brief, lateness.meanWhenLate)} when late, not more than ${rough(brief, lateness.p80)} in 8 of 10.${forgone}`,
    ),
  ];
}
