import type { ProblemRule } from "../types.ts";

/** Editing a plan's text. */
export const editingProblems: readonly ProblemRule[] = [
  {
    code: "no-such-place",
    what: "A place that is not in the document.",
    rule: "An edit names a place that exists.",
    why: "Nothing would be changed.",
    remedy: "Name another place.",
  },
  {
    code: "cannot-edit",
    what: "A place that cannot be changed by itself, such as one written through an alias.",
    rule: "An edit changes one place and leaves the rest of the text as it is.",
    why: "More would change than was asked.",
    remedy: "Change it in the text.",
  },
];
