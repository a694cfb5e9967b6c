import type { ProblemRule } from "../types.ts";

/** Progress. */
export const progressProblems: readonly ProblemRule[] = [
  {
    code: "no-status-date",
    what: "Progress without the day up to which it is recorded.",
    rule: "Progress has a status date.",
    why: "What is unfinished must lie after some day, or it would be planned into the past.",
    remedy: "Add `statusDate`.",
  },
  {
    code: "progress-date",
    what: "A day of progress before the plan or after the status date.",
    rule: "Progress has already happened.",
    why: "It would be known before it happened.",
    remedy: "Correct the day, or move `start` or `statusDate`.",
  },
  {
    code: "progress-order",
    what: "A finish without a start, or before it; work left on what is finished; money spent on what has not begun.",
    rule: "Start, then work left or spent, then finish.",
    why: "The task would be in two states.",
    remedy: "Correct one of the two, as the message says.",
  },
  {
    code: "already-recorded",
    what: "A day that stands in the plan already.",
    rule: "What was recorded stays.",
    why: "Changing a fact without a reason loses it.",
    remedy: "Nothing, or correct it in the plan with a change entry.",
  },
  {
    code: "said-twice",
    what: "One report says two things of the same task.",
    rule: "A report says each thing once.",
    why: "Which is true is not known.",
    remedy: "Keep one of them.",
  },
  {
    code: "status-before",
    what: "A status date before the one the plan has.",
    rule: "Reports go forward in time.",
    why: "Later facts would lie in the future.",
    remedy: "Give a later day.",
  },
  {
    code: "out-of-sequence",
    what: "Work that began or ended before what its links ask for.",
    rule: "Links state what must come first.",
    why: "Either the day or the link is wrong; the forecast keeps both and says so.",
    remedy: "Ask; correct the day, or change the link.",
  },
  {
    code: "not-progress",
    what: "The report is not a list of progress.",
    rule: "A JSON list of objects, or a table with headings.",
    why: "It cannot be told what happened.",
    remedy: "Write it as the message shows.",
  },
  {
    code: "heading",
    what: "A column of a report that is unknown or there twice.",
    rule: "Headings are those the message lists.",
    why: "What stands below would be lost.",
    remedy: "Correct or remove the column.",
  },
  {
    code: "no-id",
    what: "A row of a report without a task.",
    rule: "A row is known by its id.",
    why: "It cannot be told whose progress it is.",
    remedy: "Write the id.",
  },
  {
    code: "bad-value",
    what: "A value of a report that is no date or number.",
    rule: "Dates as 2027-03-01, numbers plain.",
    why: "It would be guessed.",
    remedy: "Correct it as the message says.",
  },
];
