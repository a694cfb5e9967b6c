import { SHAPES } from "../shapes.ts";
import type { Place } from "../source/place.ts";
import { enteredBy, who } from "./common.ts";
import { BOUNDS, LIKELY, UNITS } from "./estimate.ts";
import { listOf } from "./list.ts";
import { object } from "./object.ts";
import type { Reading } from "./reading.ts";
import { choice, date, number, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

export const OPINION_OF = ["duration", "effort", "cost"] as const;
export const OPINION_QUESTIONS = ["basis", "high", "low", "likely", "dissent"] as const;

const value = number("a number");

/** What one person said about a task before its estimate was settled; changes no number. */
export const opinion = object(
  "opinion",
  "an opinion",
  {
    by: required(who(), "who said it: the id of a person or stakeholder.", ["who", "person", "estimatedBy"]),
    date: optional(date(), "When it was said; the latest opinion of a person counts.", {
      mistakenFor: ["when", "on"],
    }),
    of: optional(choice(...OPINION_OF), "What it is an estimate of; by default the task's time."),
    low: required(value, "the low value.", ["min", "optimistic", "best"]),
    likely: optional(value, LIKELY, {
      mistakenFor: ["mode", "most-likely", "mostLikely"],
    }),
    high: required(value, "the high value.", ["max", "pessimistic", "worst"]),
    shape: optional(choice(...SHAPES), "Shape of the distribution; by default as every estimate's."),
    bounds: optional(choice(...BOUNDS), "What low and high are; by default as every estimate's."),
    unit: optional(choice(...UNITS), "`weeks` are of the calendar the time is counted on.", {
      fallback: "days",
    }),
    basis: optional(text("text"), "Why they would know.", { mistakenFor: ["why", "reason", "source"] }),
    order: optional(listOf(choice(...OPINION_QUESTIONS)), "The questions in the order they were asked."),
    enteredBy: enteredBy("Who wrote it down, where that was somebody else: ids."),
    dissent: optional(text("text"), "What they do not agree with.", { mistakenFor: ["objection"] }),
  },
  (draft, place: Place, reading: Reading) => {
    const { low, likely, high, shape, bounds, unit } = draft;
    // The rules of every estimate hold for it too.
    reading.estimates.push({ draft: { low, likely, high, shape, bounds, unit }, measure: "plain", place });
  },
);
