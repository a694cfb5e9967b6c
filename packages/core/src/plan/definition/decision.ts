import { listOf } from "./list.ts";
import { object } from "./object.ts";
import { date, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

const alternative = object("alternative", "an alternative", {
  name: required(text("a name"), "what it is called.", ["title", "id"]),
  text: optional(text("text"), "What it would mean.", { mistakenFor: ["description", "what"] }),
});

/** What is asked of the approvers: it is what they sign, so it counts in both hashes. */
export const decision = object("decision", "the decision", {
  ask: optional(text("text"), "What is asked, in one sentence; by default made from the commitment.", {
    mistakenFor: ["question", "request"],
  }),
  by: optional(date(), "The day by which it has to be decided.", {
    mistakenFor: ["deadline", "due", "date"],
  }),
  recommend: optional(text("text"), "What is recommended, and why.", { mistakenFor: ["recommendation"] }),
  doNothing: optional(text("text"), "What happens when nothing is done."),
  alternatives: optional(listOf(alternative), "What else was looked at.", {
    mistakenFor: ["options", "choices"],
  }),
});
