import type { ProblemRule } from "../types.ts";

/** Money, benefits, quality and sign-off in the plan. */
export const moneyProblems: readonly ProblemRule[] = [
  {
    code: "no-amount",
    what: "A benefit without amount or quantity, or an overhead without `perDay`.",
    rule: "Money has a sum.",
    why: "It would count as nothing.",
    remedy: "Add it, or take the entry out.",
  },
  {
    code: "amount-and-quantity",
    what: "A benefit with both.",
    rule: "A benefit is counted in money or in its own unit.",
    why: "It would count twice.",
    remedy: "Keep one of the two.",
  },
  {
    code: "no-period",
    what: "A recurring value without `per`.",
    rule: "A rate has its time.",
    why: "It is read as a value per year, which may not be meant.",
    remedy: "Add `per`.",
  },
  {
    code: "without-quantity",
    what: "A price or unit without a quantity.",
    rule: "It belongs to a quantity.",
    why: "There is nothing to multiply.",
    remedy: "Remove it, or add `quantity`.",
  },
  {
    code: "no-deadline",
    what: "A price of being late, but no day after which it is late.",
    rule: "Lateness is counted from a day.",
    why: "It would never be paid.",
    remedy: "Add `finishBy` to the commitment, or `after`.",
  },
  {
    code: "quality-bound",
    what: "A quality bar with no bound, or with two.",
    rule: "`atLeast` or `atMost`, exactly one.",
    why: "Whether it holds could not be told.",
    remedy: "Keep one, or make two bars of it.",
  },
  {
    code: "quality-measured",
    what: "The day of a measurement without its value.",
    rule: "`on` is the day of `measured`.",
    why: "A day alone says nothing.",
    remedy: "Add `measured`, or remove `on`.",
  },
  {
    code: "without-conditions",
    what: "Who is to meet a condition, and by when, but no condition.",
    rule: "Those keys belong to `conditions`.",
    why: "Nobody could tell what to meet.",
    remedy: "Write `conditions`.",
  },
  {
    code: "trigger-condition",
    what: "A return trigger with no condition, or with several.",
    rule: "One trigger, one condition.",
    why: "Which of them called would not be known.",
    remedy: "Make a trigger of each.",
  },
  {
    code: "no-accountable",
    what: "Nobody answers for this task.",
    rule: "Exactly one person is accountable.",
    why: "Nobody would notice.",
    remedy: "Name one.",
  },
  {
    code: "many-accountable",
    what: "Several people answer for one task.",
    rule: "Exactly one person is accountable.",
    why: "Each may rely on the other.",
    remedy: "Keep one; the others may be consulted.",
  },
  {
    code: "no-responsible",
    what: "Nobody does this task.",
    rule: "Somebody is responsible.",
    why: "Work without a doer is not planned.",
    remedy: "Name who does it.",
  },
];
