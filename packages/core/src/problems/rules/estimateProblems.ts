import type { ProblemRule } from "../types.ts";

/** Estimates. */
export const estimateProblems: readonly ProblemRule[] = [
  {
    code: "estimate-order",
    what: "Low, likely and high are not in rising order.",
    rule: "Low is at most likely, and likely at most high.",
    why: "Most often two numbers were exchanged; which two is not to be guessed.",
    remedy: "Put the smallest first.",
  },
  {
    code: "estimate-shape",
    what: "A shape that does not go with the values or bounds given.",
    rule: "Each shape has the values it needs: uniform has no likely value, lognormal nothing at or below 0.",
    why: "There is no such distribution.",
    remedy: "Change the shape or the values, as the message says.",
  },
  {
    code: "outcome-chance",
    what: "An outcome with a chance of 0 or less.",
    rule: "A chance is above 0.",
    why: "What cannot happen is no outcome.",
    remedy: "Leave it out.",
  },
  {
    code: "outcome-repeated",
    what: "The same value twice among outcomes.",
    rule: "Each value stands once.",
    why: "Two chances of one thing are one chance.",
    remedy: "Add the chances up.",
  },
  {
    code: "outcome-sum",
    what: "The chances of the outcomes do not sum to 1.",
    rule: "Something happens, and only one of them.",
    why: "Scaling them would change what was stated.",
    remedy: "Correct the chances.",
  },
];
