import { who } from "./common.ts";
import { listOf } from "./list.ts";
import { id } from "./names.ts";
import { object } from "./object.ts";
import { date, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

/**
 * A finding of `check` that was looked at and accepted. Its ids are no references: what they name may have gone from
 * the plan since, which is then itself a note of the check.
 */
export const acceptedFinding = object("accepted-finding", "an accepted finding", {
  finding: required(id(undefined), "the code of the finding, such as `range-missing`.", ["code"]),
  ids: optional(listOf(id(undefined)), "What the finding is about; by default every finding of this code.", {
    mistakenFor: ["id", "tasks", "about"],
  }),
  who: required(who(), "who accepts it.", ["by"]),
  date: required(date(), "when.", ["on"]),
  why: required(text("text"), "why it may stay.", ["reason", "because"]),
});
