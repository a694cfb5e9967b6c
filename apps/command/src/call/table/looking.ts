import { common, drawn } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

/** One side of the forecast: money, people, paths, one future, another plan. */
export const looking = [
  {
    name: "money",
    summary: "what the money is for and when; funds, contingency left, worth, cost of delay",
    plans: 1,
    options: [
      common.json,
      common.charts,
      {
        name: "signed",
        value: "FILE",
        help: "the version that was signed: what it commits to was agreed (default: the one kept beside the plan)",
      },
      { name: "sum", value: "MONEY", help: "the sum that was agreed, in place of that" },
      { name: "by", value: "DATE", help: "the date that was agreed, in place of that" },
      {
        name: "today",
        value: "DATE",
        help: "the day it is looked at, with nothing more reported (default: the plan's status date)",
      },
      common.confidence,
      ...drawn,
    ],
    notes:
      "What was agreed is the signed version's commitment, without one the plan's budget and finishBy. " +
      "Releases are proposals for whoever holds the contingency. The sponsor's reserve is counted nowhere.",
  },
  {
    name: "people",
    summary: "load against capacity, who waits for whom, what an absence does",
    plans: 1,
    options: [
      common.json,
      common.charts,
      { name: "person", value: "ID", help: "one person's weeks in figures, in place of everybody's" },
      { name: "lose", value: "ID", help: "also what it does to the commitment when this person is away" },
      { name: "lose-each", help: "... everybody in turn, the worst first" },
      { name: "days", value: "N", help: "... for how many of their working days, 1 to 366 (always needed)" },
      { name: "from", value: "DATE", help: "... from when (default: where they are needed most)" },
      { name: "part", value: "P", help: "... only this part of the capacity, e.g. 0.5 (default: all of it)" },
      common.confidence,
      ...drawn,
    ],
  },
  {
    name: "paths",
    summary: "which chains of tasks set the finish, and what is at stake near them",
    plans: 1,
    options: [
      common.json,
      common.charts,
      {
        name: "indices",
        help: "also criticality, significance, cruciality and schedule sensitivity of each task",
      },
      common.confidence,
      ...drawn,
    ],
  },
  {
    name: "why",
    summary: "what holds a task's start, link by link and person by person",
    plans: 1,
    word: { name: "TASK", means: "a task's id" },
    options: [common.json, ...drawn],
    notes: "TASK is the id of a task in the plan.",
  },
  {
    name: "future",
    summary: "one future replayed: what occurred, when, why, and what it cost",
    plans: 1,
    options: [
      common.json,
      common.charts,
      { name: "iteration", value: "N", help: "which future, counted from 1" },
      {
        name: "at",
        value: "P",
        help: "... or the first that finishes where this level does, e.g. 0.8 (default: the plan's level)",
      },
      { name: "draws", help: "also every draw that counted" },
      ...drawn,
    ],
  },
  {
    name: "compare",
    summary: "what moved the commitment between two plans",
    plans: 2,
    options: [
      common.json,
      common.charts,
      common.confidence,
      common.iterations,
      common.seed,
      common.design,
      common.workers,
    ],
    notes:
      "Both plans run on the same draws, with the new plan's seed, futures and confidence; changes are found by id, " +
      "and by `was` where something was renamed. The moves add up to the difference.",
  },
] as const satisfies readonly VerbRule[];
