import type { ConfidenceStep, PreBrief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatDays } from "../../words/formatDays.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { groupDigits } from "../../words/groupDigits.ts";
import { roundSignificant } from "../../words/roundSignificant.ts";
import { roundToLimits } from "../../words/roundToLimits.ts";
import { rough, supported } from "../says.ts";
import { text } from "../sheet/build.ts";
import type { Block } from "../sheet/types.ts";

const shown = [0.5, 0.65, 0.8, 0.9];

/** Levels side by side: what each step buys and holds, and where by the price of lateness to stop. */
export function levelAnswer({ brief, figures }: PreBrief): Block[] {
  const steps = figures.steps.filter(({ p }) => shown.includes(p) || p === brief.confidence);
  const priced = steps.some(({ latenessLeft }) => latenessLeft !== undefined);
  const end = (name: string) => ({ text: name, align: "end" as const });
  const row = (step: ConfidenceStep) => ({
    cells: [
      `${formatPercent(step.p)}${step.p === brief.confidence ? " (committed)" : ""}`,
      formatDate(step.date, "weekday"),
      ...(brief.spends ? [groupDigits(roundToLimits(step.cost, step.costLow, step.costHigh))] : []),
      formatDays(step.late.days, ""),
      ...(priced
        ? [step.latenessLeft === undefined ? "" : groupDigits(roundSignificant(step.latenessLeft, 2))]
        : []),
    ],
    whole: step.p === brief.confidence,
  });
  return [
    text(
      `No level is right by itself: each holds more time${brief.spends ? " and money" : ""} than the one before, and misses less often.`,
    ),
    {
      kind: "table",
      caption: "Levels side by side",
      head: [
        { text: "Level", align: "start" },
        { text: "Finish by", align: "start" },
        ...(brief.spends ? [end(`Sum, ${brief.plan.currency}`)] : []),
        end("days late, if late"),
        ...(priced ? [end(`Lateness left, ${brief.plan.currency}`)] : []),
      ],
      rows: steps.map(row),
    },
    text(stopWords({ brief, figures })),
  ];
}

/** Where the next step costs more than it avoids; or that lateness has no price. */
export function stopWords({ brief, figures }: Pick<PreBrief, "brief" | "figures">): string {
  const { stop } = figures;
  const at = formatPercent(brief.confidence);
  if (stop === undefined)
    return `The plan does not say what finishing late costs, so it cannot say where to stop; ${at} is the plan's choice.`;
  const close = stop.clear ? "" : " It is too close to call with this many futures.";
  const next =
    stop.next === undefined
      ? "no further step costs more than it avoids"
      : `the step on to ${formatPercent(stop.next.p)} holds ${rough(brief, stop.next.costs)} more and avoids ${rough(brief, stop.next.avoids)} of expected lateness`;
  const verdict =
    stop.p === brief.confidence
      ? `By what lateness costs, ${at} is where to stop: ${next}.`
      : stop.p < brief.confidence
        ? `By what lateness costs alone, ${formatPercent(stop.p)} would do: ${next}. Going on to ${at} is a choice for a promise that is kept more often.`
        : `By what lateness costs, going on to ${formatPercent(stop.p)} would pay: ${next}.`;
  return `${verdict}${close}`;
}

/** What a smaller contingency means: the levels below, and what happens when they fail. */
export function cutAnswer({ brief, figures }: PreBrief): Block[] {
  const below = figures.steps.filter(({ p }) => p < brief.confidence);
  const kept = below.filter(({ p }) => p === 0.5 || p === 0.65).concat(below.slice(-1));
  const steps = [...new Set(kept)].sort((a, b) => b.p - a.p);
  if (steps.length === 0)
    return [
      text(`${formatPercent(brief.confidence)} is the lowest level looked at: there is little to cut.`),
    ];
  return [
    {
      kind: "list",
      items: steps.map(({ p, date, cost, late, over }) => [
        `Hold only ${formatDate(date, "short")}${brief.spends ? ` and ${supported(brief, cost)}` : ""}: each is kept in ${formatPercent(p)} of futures. `,
        `When the date is missed, it is by ${formatDays(late.days, "calendar day")} on average${
          brief.spends ? `; when the sum is, by ${rough(brief, over.money)}` : ""
        }.`,
      ]),
    },
    text(
      `What is not held is not saved: the work takes as long${brief.spends ? " and costs as much" : ""} as it does.`,
    ),
  ];
}
