import type { ProblemRule } from "../types.ts";

/** The register. */
export const registerProblems: readonly ProblemRule[] = [
  {
    code: "impact-empty",
    what: "An impact without any effect.",
    rule: "An impact says what it does: delay, factor, wait or cost.",
    why: "It would happen and change nothing.",
    remedy: "Add what it does.",
  },
  {
    code: "impact-target",
    what: "A delay without a place, or with both tasks and a phase.",
    rule: "An impact touches tasks or one phase.",
    why: "It would touch nothing, or some things twice.",
    remedy: "Keep one, or write two impacts.",
  },
  {
    code: "impact-nothing",
    what: "A phase that holds milestones only.",
    rule: "There is something to delay.",
    why: "Nothing would happen.",
    remedy: "Name the tasks it touches.",
  },
  {
    code: "impact-on-milestone",
    what: "A delay or factor on a milestone.",
    rule: "A milestone can only wait.",
    why: "It has no duration to lengthen.",
    remedy: "Write `wait`, or name a task.",
  },
  {
    code: "repeated-task",
    what: "A task twice in one impact.",
    rule: "A task is touched once by an impact.",
    why: "The delay would count twice.",
    remedy: "Name it once.",
  },
  {
    code: "group-sum",
    what: "Chances in a group sum to more than 1.",
    rule: "What excludes each other sums to at most 1.",
    why: "There is no such set of chances.",
    remedy: "Lower them, or take one out of the group.",
  },
  {
    code: "group-occurred",
    what: "Two of a group have occurred.",
    rule: "They exclude each other.",
    why: "Either the group or a status is wrong.",
    remedy: "Take one out, or correct its status.",
  },
  {
    code: "group-raised",
    what: "A response raises a chance inside a group.",
    rule: "In a group responses may only lower it.",
    why: "The chances could sum to more than 1.",
    remedy: "Lower its `probability`, or take the entry out of the group.",
  },
  {
    code: "actual-status",
    what: "What an entry did is written, but it has not occurred.",
    rule: "`actual` belongs to what occurred.",
    why: "It would count twice: as a fact and as a chance.",
    remedy: "Write `status: occurred`, or remove `actual`.",
  },
  {
    code: "actual-nowhere",
    what: "Days are written for an entry that delays nothing.",
    rule: "Days touch a task.",
    why: "They would be lost.",
    remedy: "Add an impact with `tasks` and `delay`, or remove the days.",
  },
];
