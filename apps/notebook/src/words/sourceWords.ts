import { formatDate, formatDays, formatMoney, formatPercent, groupDigits } from "@leeway/charts";
import { type Forecast, limitRanks, rankOf, wilson } from "@leeway/core";
import { committedSum, roundMoney, spends } from "./answerWords.ts";

/** The figures of the answer that say where they come from. */
export type SourceKey =
  | "date"
  | "sum"
  | "days"
  | "money"
  | "finishBy"
  | "budget"
  | "both"
  | "writtenDate"
  | "writtenSum"
  | "kept";

/** Where one figure comes from, for whoever wants to check it. */
export interface SourceOf {
  /** The figure itself. */
  title: string;
  /** How it is worked out, in words. */
  how: string;
  /** What went in. */
  inputs: readonly (readonly [term: string, value: string])[];
  /** The verb that gives the same, and where in its JSON the figure stands. */
  verb: "forecast" | "confidence";
  at: string;
}

/** Figures that are a sum, or the chance of one. */
const ofMoney: ReadonlySet<SourceKey> = new Set(["sum", "money", "budget", "both", "writtenSum", "kept"]);

/** The formula, the inputs and the verb behind a figure of the answer. Undefined: the forecast does not have it. */
export function sourceOf(key: SourceKey, forecast: Forecast): SourceOf | undefined {
  if (ofMoney.has(key) && !spends(forecast)) return undefined;
  switch (key) {
    case "date":
      return committedDate(forecast);
    case "sum":
      return committedCost(forecast);
    case "days":
    case "money":
      return contingency(key, forecast);
    default:
      return chance(key, forecast);
  }
}

function ranks({ committed, iterations: n }: Forecast) {
  const limits = limitRanks(committed.confidence, n);
  return {
    n: groupDigits(n),
    rank: groupDigits(rankOf(committed.confidence, n)),
    limits: `ranks ${groupDigits(limits.low)} and ${groupDigits(limits.high)}`,
    level: formatPercent(committed.confidence),
  };
}

function committedDate(forecast: Forecast): SourceOf {
  const { committed } = forecast;
  const { n, rank, limits, level } = ranks(forecast);
  return {
    title: formatDate(committed.date, "long"),
    how: `All ${n} futures in order of their finish: number ${rank} is the earliest finish that at least ${level} of them do not exceed. The date is the day that finish falls on; nothing is interpolated.`,
    inputs: [
      ["Rank", `${rank} of ${n}`],
      ["95 % limits", `${formatDate(committed.lowDate)} to ${formatDate(committed.highDate)}, ${limits}`],
    ],
    verb: "forecast",
    at: "committed.date",
  };
}

function committedCost(forecast: Forecast): SourceOf {
  const { committed, plan } = forecast;
  const { n, rank, limits, level } = ranks(forecast);
  const units = (value: number) => formatMoney(Math.round(value), plan.currency);
  return {
    title: committedSum(forecast),
    how: `All ${n} futures in order of their cost: number ${rank} is the least sum that at least ${level} of them do not exceed. It is shown with no more digits than its limits support.`,
    inputs: [
      ["Rank", `${rank} of ${n}`],
      ["Before rounding", units(committed.cost)],
      ["95 % limits", `${units(committed.costLow)} to ${units(committed.costHigh)}, ${limits}`],
    ],
    verb: "forecast",
    at: "committed.cost",
  };
}

function contingency(key: "days" | "money", forecast: Forecast): SourceOf {
  const { committed, asWritten, plan, contingency: over } = forecast;
  const level = formatPercent(committed.confidence);
  if (key === "days") {
    return {
      title: formatDays(over.workingDays),
      how: "The committed finish less the finish of the plan as written, both counted in working days of the plan's calendar from its start. The plan as written takes every estimate as it is written, mostly its likely value, and no risk occurs that has not occurred yet.",
      inputs: [
        [`Committed, ${level}`, `${formatDate(committed.date)}, ${formatDays(committed.workingDays)}`],
        ["As written", `${formatDate(asWritten.finish)}, ${formatDays(asWritten.workingDays)}`],
        ["Calendar days", groupDigits(over.calendarDays)],
      ],
      verb: "forecast",
      at: "contingency.workingDays",
    };
  }
  return {
    title: formatMoney(roundMoney(over.money, forecast), plan.currency),
    how: "The committed sum less the cost of the plan as written. It is shown with no more digits than the limits of the committed sum support.",
    inputs: [
      [`Committed, ${level}`, formatMoney(Math.round(committed.cost), plan.currency)],
      ["As written", formatMoney(Math.round(asWritten.cost), plan.currency)],
      ["Before rounding", formatMoney(Math.round(over.money), plan.currency)],
    ],
    verb: "forecast",
    at: "contingency.money",
  };
}

type ChanceKey = Exclude<SourceKey, "date" | "sum" | "days" | "money">;

function chance(key: ChanceKey, forecast: Forecast): SourceOf | undefined {
  const { asked, chance: chances, asWritten, committed, plan, finish, cost, iterations: n } = forecast;
  const by = asked.finishBy === undefined ? "" : formatDate(asked.finishBy);
  const within = asked.budget === undefined ? "" : formatMoney(asked.budget, plan.currency);
  const written = formatMoney(asWritten.cost, plan.currency);
  const kinds: Record<ChanceKey, [share: number | undefined, counted: string, at: string]> = {
    finishBy: [chances.finishBy, `finish on ${by} or before`, "chance.finishBy"],
    budget: [chances.budget, `cost ${within} or less`, "chance.budget"],
    both: [chances.both, `finish on ${by} or before and cost ${within} or less`, "chance.both"],
    writtenDate: [
      finish.asWrittenChance,
      `finish no later than the plan as written, ${formatDate(asWritten.finish)}`,
      "finish.asWrittenChance",
    ],
    writtenSum: [
      cost.asWrittenChance,
      `cost no more than the plan as written, ${written}`,
      "cost.asWrittenChance",
    ],
    kept: [
      committed.both,
      `finish on ${formatDate(committed.date)} or before and cost no more than the committed sum, each future counted once`,
      "committed.both",
    ],
  };
  const [share, counted, at] = kinds[key];
  if (share === undefined) return undefined;
  const { low, high } = wilson(Math.round(share * n), n);
  return {
    title: formatPercent(share),
    how: `The futures that ${counted}, counted, over all ${groupDigits(n)}.`,
    inputs: [
      ["Counted", `${groupDigits(Math.round(share * n))} of ${groupDigits(n)}`],
      ["95 % limits", `${limit(low)} to ${limit(high)}, by Wilson's score interval`],
    ],
    verb: "forecast",
    at,
  };
}

function limit(share: number): string {
  return `${groupDigits(100 * share, 1)} %`;
}

/** The call that gives the same, its file name fit for a shell. */
export function commandWords(verb: string, file: string, iterations: number | undefined): string {
  const plain = /^[\w.-]+$/.test(file) ? file : `'${file.replaceAll("'", "'\\''")}'`;
  return `leeway ${verb} ${plain}${iterations === undefined ? "" : ` --iterations ${iterations}`} --json`;
}
