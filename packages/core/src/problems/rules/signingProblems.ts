import type { ProblemRule } from "../types.ts";

/** Signing, objections and changes. */
export const signingProblems: readonly ProblemRule[] = [
  {
    code: "unknown-person",
    what: "Nobody in the plan has this id.",
    rule: "Who decides or speaks is in the plan.",
    why: "A signature of nobody binds nobody.",
    remedy: "Name one of the ids in the plan.",
  },
  {
    code: "not-an-approver",
    what: "Somebody who is no approver, or may not stand in for one.",
    rule: "Only approvers decide.",
    why: "It would look signed.",
    remedy: "Name an approver, or make them one in the plan first.",
  },
  {
    code: "no-approver",
    what: "A change that nobody agreed to.",
    rule: "A change names who agreed to it.",
    why: "An approved plan would change by itself.",
    remedy: "Add who agreed; the message names who may.",
  },
  {
    code: "not-a-party",
    what: "Somebody who neither raised the objection nor accepted it, and does not decide on the plan.",
    rule: "An objection is withdrawn or opened again by those it concerns.",
    why: "Anybody could put away another's objection.",
    remedy: "Ask one of those the message names.",
  },
  {
    code: "no-conditions",
    what: "Approved subject to conditions, without conditions.",
    rule: "Conditions are written down.",
    why: "Nobody could meet them.",
    remedy: "Add them.",
  },
  {
    code: "above-limit",
    what: "More money than the approver may approve.",
    rule: "The sum asked for is within the limit.",
    why: "The signature would not hold.",
    remedy: "Ask somebody whose limit suffices, or change the plan.",
  },
  {
    code: "open-objection",
    what: "An objection that is open.",
    rule: "Open objections are answered, or accepted by name.",
    why: "It would be passed over in silence.",
    remedy: "Answer it, or accept it by name.",
  },
  {
    code: "unknown-objection",
    what: "No objection of that id.",
    rule: "An objection is in the plan.",
    why: "There is nothing to answer.",
    remedy: "Name one of those there are.",
  },
  {
    code: "objection-state",
    what: "An objection that is in that state already.",
    rule: "Open, then answered or accepted.",
    why: "Nothing would change.",
    remedy: "There is nothing to do.",
  },
  {
    code: "error-found",
    what: "The check finds an error in the plan.",
    rule: "A plan with errors is not signed.",
    why: "It contradicts its own promise.",
    remedy: "Mend it; `leeway check` says how.",
  },
  {
    code: "date-before",
    what: "A decision dated before an earlier one by the same person.",
    rule: "Decisions go forward in time.",
    why: "Which of them holds would be unclear.",
    remedy: "Name a later day.",
  },
  {
    code: "empty-text",
    what: "A change, reason or objection without words.",
    rule: "What is logged is said.",
    why: "Later nobody knows what was meant.",
    remedy: "Say it in a sentence.",
  },
];
