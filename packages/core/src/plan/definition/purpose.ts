import { who } from "./common.ts";
import { estimate } from "./estimate.ts";
import { listOf } from "./list.ts";
import { id, reference } from "./names.ts";
import { object } from "./object.ts";
import { choice, date, flag, money, number, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

const goal = object("goal", "a goal", {
  id: required(id("goal"), "its id."),
  statement: required(text("a statement"), "what is to be reached.", ["name", "title", "text"]),
  measure: optional(text("text"), "How it is measured."),
  target: optional(text("text"), "The value aimed at, in words."),
  by: optional(date(), "By when."),
  owner: optional(who(), "Who answers for it."),
});

const scopeItem = object("scope-item", "a scope item", {
  id: required(id("scope item"), "its id."),
  name: optional(text("a name"), "What it is called; by default its id."),
  optional: optional(flag(), "Whether it can be left out.", { fallback: false }),
  lost: optional(text("text"), "What is lost without it."),
});

/** A bar the result has to clear: what is expected today is held against it, and once measured, what was measured. */
const quality = object("quality", "a quality bar", {
  id: required(id("quality bar"), "its id."),
  statement: required(text("a statement"), "what has to hold.", ["name", "title", "text"]),
  atLeast: optional(number("a number"), "The least that will do; exactly one of `atLeast` and `atMost`.", {
    mistakenFor: ["min", "minimum"],
  }),
  atMost: optional(number("a number"), "The most that will do, in place of `atLeast`.", {
    mistakenFor: ["max", "maximum"],
  }),
  unit: optional(text("text"), "The unit of these numbers, in words."),
  expected: optional(estimate("plain"), "What is expected today, an estimate.", {
    mistakenFor: ["forecast", "likely"],
  }),
  measured: optional(number("a number"), "What was measured; it counts in place of `expected`.", {
    mistakenFor: ["actual", "value"],
  }),
  on: optional(date(), "The day it was measured.", { mistakenFor: ["date", "measuredOn"] }),
  owner: optional(who(), "Who sees that it holds."),
});

export const purpose = object("purpose", "the purpose", {
  problem: optional(text("text"), "What is wrong today."),
  goals: optional(listOf(goal), "What is to be reached."),
  scope: optional(
    object("scope", "the scope", {
      in: optional(listOf(scopeItem), "What is delivered."),
      out: optional(listOf(text("text")), "What is not."),
    }),
    "What is in and what is out.",
  ),
  constraints: optional(listOf(text("text")), "What cannot be changed."),
  quality: optional(listOf(quality), "Bars the result has to clear, each with a number.", {
    mistakenFor: ["criteria", "acceptance"],
  }),
});

const KINDS = ["revenue", "cost-saving", "time-saving", "process", "efficiency", "risk-reduction"] as const;
const months = () => number("a number of months", { min: 0 });

export const benefit = object("benefit", "a benefit", {
  id: required(id("benefit"), "its id."),
  name: required(text("a name"), "what it is called.", ["title"]),
  kind: optional(choice(...KINDS), "What sort of benefit."),
  goal: optional(reference(["goal"]), "The goal it serves."),
  owner: optional(who(), "Who sees that it comes."),
  baseline: optional(text("text"), "How it is today, in words and figures."),
  target: optional(text("text"), "How it is to be, in words and figures."),
  amount: optional(estimate("money"), "Money per period; exactly one of `amount` and `quantity`.", {
    mistakenFor: ["value"],
  }),
  quantity: optional(estimate("plain"), "A number of units per period, in place of `amount`."),
  unit: optional(text("text"), "The unit of `quantity`, in words."),
  worth: optional(money(), "Money per unit; without it, reported only."),
  per: optional(choice("day", "week", "month", "year", "once"), "The period.", {
    fallback: "year",
    mistakenFor: ["every"],
  }),
  starts: optional(reference(["task"]), "Begins at this task's finish; by default the plan's."),
  lag: optional(months(), "Months from that finish until it begins.", {
    fallback: 0,
    mistakenFor: ["startLag", "delay", "after"],
  }),
  ramp: optional(months(), "Months until it is there in full."),
  lasts: optional(months(), "Months it lasts."),
  until: optional(date(), "Last day it counts."),
});

export const appraisal = object("appraisal", "the appraisal", {
  years: optional(number("a number of years", { min: 0, max: 100 }), "How far benefits count.", {
    fallback: 100,
  }),
  discountRate: optional(
    number("a rate such as 0.03", { min: -1, max: 1, open: true }),
    "Yearly discount rate.",
    {
      fallback: 0,
      mistakenFor: ["rate", "discount"],
    },
  ),
});
