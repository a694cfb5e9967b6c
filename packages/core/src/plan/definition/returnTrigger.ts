import { id, reference } from "./names.ts";
import { object } from "./object.ts";
import { date, moneyFromZero, number, probability, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

/** The conditions a return trigger may have; it has exactly one. */
export const TRIGGER_CONDITIONS = [
  "chanceOfDateBelow",
  "chanceOfBudgetBelow",
  "contingencyCoverBelow",
  "signpost",
  "finishLaterThan",
  "costAbove",
] as const;

/** When the plan comes back to those who approved it: it is what they sign, so it counts in both hashes. */
export const returnTrigger = object("return-trigger", "a return trigger", {
  id: required(id("return trigger"), "its id."),
  name: optional(text("a name"), "What it is called.", { mistakenFor: ["title"] }),
  chanceOfDateBelow: optional(
    probability(),
    "Trips when the chance of the date agreed (signed, else `commitment.finishBy`) is below this.",
    {
      mistakenFor: ["chanceOfFinishBelow", "dateChanceBelow", "chanceBelow"],
    },
  ),
  chanceOfBudgetBelow: optional(
    probability(),
    "Trips when the chance of the sum agreed (signed, else `commitment.budget`) is below this.",
    { mistakenFor: ["chanceOfCostBelow", "budgetChanceBelow"] },
  ),
  contingencyCoverBelow: optional(
    number("a ratio such as 1", { min: 0 }),
    "Trips when the contingency left, over the exposure left, is below this, in money or in days.",
    { mistakenFor: ["coverBelow", "contingencyBelow"] },
  ),
  signpost: optional(reference(["assumption"]), "Trips once this assumption is `tripped` or `occurred`.", {
    mistakenFor: ["assumption", "tripped"],
  }),
  finishLaterThan: optional(date(), "Trips when the committed date is later than this day.", {
    mistakenFor: ["dateAfter", "finishAfter", "laterThan"],
  }),
  costAbove: optional(moneyFromZero(), "Trips when the committed sum is above this.", {
    mistakenFor: ["sumAbove", "budgetAbove"],
  }),
});
