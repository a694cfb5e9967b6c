import type { ProblemRule } from "../types.ts";

/** Tasks and links. */
export const taskProblems: readonly ProblemRule[] = [
  {
    code: "no-duration",
    what: "A task that has neither duration nor effort.",
    rule: "A task takes time, or it is a milestone.",
    why: "It would be over at once.",
    remedy: "Add `duration` or `effort`, or `milestone: true`.",
  },
  {
    code: "duration-and-effort",
    what: "A task with both.",
    rule: "Effort over people gives the duration.",
    why: "The two could contradict each other.",
    remedy: "Keep one of the two.",
  },
  {
    code: "effort-without-people",
    what: "Effort and nobody to do it, or people whose shares sum to 0.",
    rule: "Effort is done by somebody.",
    why: "It would never end.",
    remedy: "Add `people` with a share above 0, or write `duration`.",
  },
  {
    code: "milestone-key",
    what: "A milestone with a duration, people or another key of work.",
    rule: "A milestone is a point in time.",
    why: "It would take time and not take time.",
    remedy: "Remove the key, or `milestone`.",
  },
  {
    code: "repeated-person",
    what: "Somebody twice in one task.",
    rule: "A person stands once, with the whole share.",
    why: "Which share counts would be a guess.",
    remedy: "Name them once.",
  },
  {
    code: "loop",
    what: "Tasks that wait for each other in a circle; the message shows the way round.",
    rule: "What follows what has a beginning.",
    why: "None of them could ever start.",
    remedy: "Remove one of the links.",
  },
  {
    code: "repeated-link",
    what: "The same two tasks linked twice in the same way.",
    rule: "One link of a kind between two tasks.",
    why: "With two lags only one could count.",
    remedy: "Keep one, or change its `link`.",
  },
];
