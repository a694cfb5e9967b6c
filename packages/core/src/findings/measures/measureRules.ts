import { sources } from "../sources.ts";
import { thresholds } from "../thresholds.ts";
import type { PlanMeasure } from "../types.ts";

/** A measure before it is taken. */
export type MeasureRule = Pick<
  PlanMeasure,
  "code" | "name" | "definition" | "unit" | "threshold" | "bound" | "question" | "source"
>;

const share = { unit: "share", threshold: thresholds.share, bound: "at most" } as const;
const none = { unit: "count", threshold: 0, bound: "at most" } as const;
const index = { unit: "ratio", threshold: thresholds.index, bound: "at least" } as const;

/** The fourteen of the trade, in its order. Tasks: unfinished ones, milestones left out. */
export const measureRules = [
  {
    ...share,
    code: "missing-logic",
    name: "Tasks with an open end",
    definition: "Tasks without a predecessor or without a successor, by tasks.",
    question: "What do these wait for, and who waits for them?",
    source: sources.assessment("4.1"),
  },
  {
    ...none,
    code: "leads",
    name: "Links with a negative lag",
    definition: "Links whose lag is below zero as written.",
    question: "Which part of the task before really comes first?",
    source: sources.assessment("4.2"),
  },
  {
    ...share,
    code: "lags",
    name: "Links with a lag",
    definition: "Links whose lag is above zero as written, by links.",
    question: "What happens in these days, and who does it?",
    source: sources.assessment("4.3"),
  },
  {
    code: "finish-to-start",
    name: "Links from a finish to a start",
    definition: "Links from a finish to a start, by links.",
    unit: "share",
    threshold: thresholds.finishToStart,
    bound: "at least",
    question: "Would splitting a task say the same more plainly?",
    source: sources.assessment("4.4"),
  },
  {
    ...share,
    code: "hard-dates",
    name: "Tasks held by a date",
    definition:
      "Tasks not begun with `notBefore` or `holdToPlan` and no `note` that gives the reason, by tasks.",
    question: "What is the reason behind each date?",
    source: sources.assessment("4.5"),
  },
  {
    ...share,
    code: "high-float",
    name: "Tasks with much float",
    definition: `Tasks that could slip more than ${thresholds.days} working days before the finish moved, by tasks.`,
    question: "Is a link missing behind these?",
    source: sources.assessment("4.6"),
  },
  {
    ...none,
    code: "negative-float",
    name: "Tasks with negative float",
    definition: "Tasks that would have to start earlier for the date asked for.",
    question: "What gives: the date, the scope or the way it is done?",
    source: sources.assessment("4.7"),
  },
  {
    ...share,
    code: "long-tasks",
    name: "Long tasks",
    definition: `Tasks longer than ${thresholds.days} working days as written, outlines left out, by tasks.`,
    question: "How would you notice half-way that one is late?",
    source: sources.assessment("4.8"),
  },
  {
    ...none,
    code: "past-dates",
    name: "Dates in the past",
    definition: "Targets of unfinished work, and the date asked for, that have passed.",
    question: "Were they missed, or is progress not recorded?",
    source: sources.assessment("4.9"),
  },
  {
    code: "without-resources",
    name: "Tasks without people or cost",
    definition: "Tasks of a working day or more that name nobody, cost nothing and have no `note`, by tasks.",
    unit: "share",
    threshold: 0,
    bound: "at most",
    question: "Whose time do these take?",
    source: sources.assessment("4.10"),
  },
  {
    ...share,
    code: "missed-tasks",
    name: "Tasks that missed their day",
    definition:
      "Tasks due by the status date, as written without progress, that are unfinished or finished later, by tasks due.",
    question: "What held them up, and does it hold the rest too?",
    source: sources.assessment("4.11"),
  },
  {
    code: "path-test",
    name: "Path that responds",
    definition: `Working days the finish moves when one task that sets it takes ${thresholds.slip} working days longer: the least of all, in a large plan of the longest.`,
    unit: "working days",
    threshold: thresholds.slip,
    bound: "at least",
    question: "Which link is missing, or which date holds the finish?",
    source: sources.assessment("4.12"),
  },
  {
    ...index,
    code: "cpli",
    name: "Critical path length index",
    definition:
      "Working days left on the path plus the float to the date asked for, by the working days left on the path.",
    question: "Where would the missing days come from?",
    source: sources.index,
  },
  {
    ...index,
    code: "bei",
    name: "Baseline execution index",
    definition: "Tasks finished by the status date, by tasks due by then as written without progress.",
    question: "Why is work finished more slowly than planned?",
    source: sources.assessment("4.14"),
  },
] as const satisfies readonly MeasureRule[];
export type MeasureCode = (typeof measureRules)[number]["code"];
