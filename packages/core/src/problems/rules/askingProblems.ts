import type { ProblemRule } from "../types.ts";

/** What is asked of a plan. */
export const askingProblems: readonly ProblemRule[] = [
  {
    code: "beyond-calendar",
    what: "The plan runs past the last day the calendar reaches.",
    rule: "Plans end within about a hundred years.",
    why: "Beyond it no date could be given.",
    remedy: "Look for a duration in the wrong unit; shorten the plan.",
  },
  {
    code: "option-value",
    what: "An option of a call outside what it may be.",
    rule: "The message names the bounds.",
    why: "It would mean nothing.",
    remedy: "Write a value within them.",
  },
  {
    code: "contradiction",
    what: "A scenario that takes and leaves the same thing.",
    rule: "With or without, not both.",
    why: "Which of the two is meant is not known.",
    remedy: "Leave out one of them.",
  },
  {
    code: "without-effect",
    what: "A scenario that changes nothing: adopted already, closed already.",
    rule: "A what-if differs from the plan.",
    why: "The two answers will be the same; said so that nobody wonders.",
    remedy: "Nothing, or name another.",
  },
  {
    code: "nothing-asked",
    what: "The plan asks for no date and no sum.",
    rule: "To reach something it must be named.",
    why: "There is nothing to reach.",
    remedy: "Add `finishBy` or `budget`, or hand one over.",
  },
  {
    code: "no-such-future",
    what: "A future outside the run, or a level that is none.",
    rule: "Futures are counted from 1; levels lie between 0 and 1.",
    why: "There is nothing to replay.",
    remedy: "Name one within the run.",
  },
  {
    code: "absence",
    what: "An absence that cannot be: nobody of that id, no days, a day that is past.",
    rule: "Somebody in the plan, from a day to come, for 1 to 366 working days.",
    why: "There is nothing to try.",
    remedy: "Correct it as the message says.",
  },
  {
    code: "before-status-date",
    what: "A day of looking before the plan's status date.",
    rule: "Today is not before what is recorded.",
    why: "What has happened would lie ahead.",
    remedy: "Give a later day.",
  },
  {
    code: "other-currency",
    what: "The signed version counts in another currency.",
    rule: "Both count in the same.",
    why: "Sums could not be compared.",
    remedy: "Give the agreed sum in the plan's currency.",
  },
];
