import { sources } from "../sources.ts";
import type { CheckRule } from "../types.ts";

export const signOffRules = [
  {
    code: "change-unexplained",
    family: "sign-off",
    severity: "error",
    what: "A change after an approval lacks its reason or who agreed to it",
    why: "An approved plan is changed by decision; without a reason the next reader cannot tell drift from decision.",
    advice: "Add `why`, and in `approvedBy` who agreed to it.",
    source: sources.schedule("best practice 10, maintaining a baseline schedule"),
  },
  {
    code: "change-unlogged",
    family: "sign-off",
    severity: "error",
    what: "The plan is not the one that was approved, and no change is logged",
    why: "What was approved is a baseline: it changes by decision, with a reason and somebody who agreed.",
    advice: "Log it: `leeway change PLAN --what ... --why ... --as ... --approved-by ...`.",
    source: sources.schedule("best practice 10, maintaining a baseline schedule"),
  },
  {
    code: "conditions-lapsed",
    family: "sign-off",
    severity: "error",
    what: "The day by which an approval's conditions had to be met has passed",
    why: "An approval on a condition that was not met is none.",
    advice: "Write `conditionsMet` once they were met, or ask the approver again.",
    source: sources.practice,
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
