import { sources } from "../sources.ts";
import type { CheckRule } from "../types.ts";

export const signOffRules = [
  {
    code: "change-unexplained",
    family: "sign-off",
    severity: "warning",
    what: "A change after an approval lacks its reason or who decided it",
    why: "An approved plan is changed by decision; without a reason the next reader cannot tell drift from decision.",
    advice: "Add `why`, and in `who` or `approvedBy` who decided it.",
    source: sources.schedule("best practice 10, maintaining a baseline schedule"),
  },
  {
    code: "objection-open",
    family: "sign-off",
    severity: "note",
    what: "An objection is open",
    why: "It will be raised in the meeting if it is not answered before.",
    advice: "Answer it with evidence, or have it accepted by name.",
    source: sources.practice,
  },
  {
    code: "acceptance-unused",
    family: "sign-off",
    severity: "note",
    what: "An accepted finding is no longer found",
    why: "It was mended, its code or id is mistyped, or it was accepted before it came up.",
    advice: "Take the acceptance out, or correct it.",
    source: sources.practice,
  },
] as const satisfies readonly CheckRule[];
