import type { ProblemRule } from "../types.ts";

/** People, calendars and correlations. */
export const peopleProblems: readonly ProblemRule[] = [
  {
    code: "share-above-capacity",
    what: "A task takes more of a person than there is.",
    rule: "A share is at most the capacity.",
    why: "Nobody could ever do it.",
    remedy: "Lower the share, or raise the capacity.",
  },
  {
    code: "dates-reversed",
    what: "A time off that ends before it begins.",
    rule: "From comes before to.",
    why: "Nobody would be away.",
    remedy: "Exchange the two dates.",
  },
  {
    code: "calendar-loop",
    what: "Calendars that are like each other in a circle.",
    rule: "`like` leads to a beginning.",
    why: "There would be no days to start from.",
    remedy: "Let one of them stand alone.",
  },
  {
    code: "calendar-chain",
    what: "`like` leads through more calendars than anybody can follow.",
    rule: "Chains are short.",
    why: "A change far down would be missed.",
    remedy: "Start from a calendar nearer the beginning.",
  },
  {
    code: "repeated-member",
    what: "The same item twice in a set that moves together.",
    rule: "An item is named once.",
    why: "It is always one with itself.",
    remedy: "Name it once.",
  },
  {
    code: "repeated-pair",
    what: "Two sets that both state how the same pair moves together.",
    rule: "Each pair has one coefficient.",
    why: "Two could contradict each other.",
    remedy: "Name each pair once.",
  },
  {
    code: "too-many-pairs",
    what: "More correlated pairs than can be worked with.",
    rule: "There is a limit, which the message names.",
    why: "Checking that they agree would take longer than the simulation.",
    remedy: "Name fewer tasks in a set, or write the shared cause as a risk.",
  },
  {
    code: "no-draw",
    what: "An item in a correlation that has nothing uncertain to move.",
    rule: "What moves together is drawn.",
    why: "There would be no effect.",
    remedy: "Give it a range, or leave it out of the set.",
  },
];
