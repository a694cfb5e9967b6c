import type { ProblemRule } from "../types.ts";

/** Names and what they point at. */
export const nameProblems: readonly ProblemRule[] = [
  {
    code: "repeated-id",
    what: "Two items with the same id.",
    rule: "An id names one thing.",
    why: "Links and random draws would be of both.",
    remedy: "Give one of the two another id.",
  },
  {
    code: "repeated-name",
    what: "Two phases or calendars with the same name.",
    rule: "Such a name is unique among its like.",
    why: "A task naming it could mean either.",
    remedy: "Give each its own name.",
  },
  {
    code: "unknown-id",
    what: "An id that nothing in the plan has.",
    rule: "Every id points at something that exists.",
    why: "A link to nowhere, quietly dropped, lets work begin too early.",
    remedy: "Correct it; the nearest id is suggested.",
  },
  {
    code: "wrong-kind",
    what: "An id that exists but names another kind of thing, such as a person where a task belongs.",
    rule: "An id names what is asked for there.",
    why: "It cannot be done what was asked.",
    remedy: "Name one of the kind the message gives.",
  },
  {
    code: "unknown-task",
    what: "The task asked about is not in the plan.",
    rule: "What is asked about exists.",
    why: "There is no answer.",
    remedy: "Name one of the ids suggested.",
  },
  {
    code: "old-id-taken",
    what: "`was` names an id that something else has or had.",
    rule: "Old ids lead to one new one.",
    why: "The two would share their random draws, and so always fare alike.",
    remedy: "Keep `was` on the one that was renamed.",
  },
  {
    code: "given-calendar",
    what: "A calendar of the plan takes the name of one that is built in.",
    rule: "Built-in calendars cannot be changed.",
    why: "Two plans would mean other days by the same word.",
    remedy: "Give it another name, with `like`.",
  },
];
