import { common, drawn } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

/** A plan under way. */
export const live = [
  {
    name: "record",
    summary: "progress written into the plan; what moved, what is missing, what trips",
    plans: 1,
    options: [
      { name: "status", value: "DATE", help: "the day up to which you report (always needed)" },
      {
        name: "started",
        value: "TASK[=DATE]",
        repeats: true,
        help: "it started (default: on the status date)",
      },
      {
        name: "finished",
        value: "TASK[=DATE]",
        repeats: true,
        help: "it finished (default: on the status date)",
      },
      {
        name: "remaining",
        value: "TASK=DAYS",
        repeats: true,
        help: "working days that remain of a started task: 6, or low, likely, high: 5,7,14",
      },
      { name: "spent", value: "TASK=MONEY", repeats: true, help: "money spent on it so far" },
      {
        name: "occurred",
        value: "ID",
        repeats: true,
        help: "the risk has happened, the assumption is wrong",
      },
      {
        name: "cost",
        value: "ID=MONEY",
        repeats: true,
        help: "what it cost in fact, once it has occurred: takes the place of the range",
      },
      {
        name: "days",
        value: "ID=DAYS",
        repeats: true,
        help: "the working days it took in fact; 0 where they are in what remains already",
      },
      { name: "closed", value: "ID", repeats: true, help: "the risk or assumption can no longer happen" },
      {
        name: "tripped",
        value: "ASSUMPTION[=DATE]",
        repeats: true,
        help: "its signpost was seen (default: on the status date)",
      },
      {
        name: "from",
        value: "FILE",
        help: "also what a table (.csv) or list (.json) reports: id, started, finished, remaining, spent, status, tripped, cost, days",
      },
      { name: "as", value: "WHO", help: "who records it: an id of the plan" },
      { name: "why", value: "TEXT", help: "a remark for the history" },
      { name: "dry-run", help: "write nothing; show the lines that would change" },
      { name: "today", value: "DATE", help: "the day it is written on (default: today)" },
      common.json,
      common.workers,
    ],
    notes:
      "Writes into the plan's text (comments and order stay), keeps the version in NAME.versions and the forecast in " +
      "NAME.history.jsonl beside it. With one thing wrong nothing is written, and all that is wrong is listed.",
  },
  {
    name: "history",
    summary: "how the commitment drifted over the forecasts that were kept",
    plans: 1,
    options: [
      { name: "add", help: "keep the forecast of the plan as it is now, first" },
      { name: "why", value: "TEXT", help: "... a remark to keep with it" },
      { name: "as", value: "WHO", help: "... who keeps it: an id of the plan" },
      { name: "explain", help: "also what moved from each forecast to the next" },
      { name: "fail", help: "end with code 1 when the history is broken or a return trigger has tripped" },
      { name: "today", value: "DATE", help: "the day it is written on (default: today)" },
      common.json,
      common.charts,
      common.workers,
    ],
    notes:
      "Forecasts are kept one a line in NAME.history.jsonl; each line holds the hash of the line before, so that a " +
      "line changed, taken out or put in shows.",
  },
  {
    name: "triggers",
    summary: "when we come back to the approvers, and where each of these conditions stands",
    plans: 1,
    options: [
      { name: "fail", help: "end with code 1 when one has tripped" },
      { name: "today", value: "DATE", help: "the day it is looked at (default: today)" },
      common.json,
      common.confidence,
      ...drawn,
      common.workers,
    ],
    notes:
      "What was agreed is the plan's key `returnTriggers`. Chances and cover are measured against what the signed " +
      "version commits to, else against the plan's `finishBy` and `budget`. The conditions of an approval stand among them " +
      "where they have a day (`conditionsBy`).",
  },
] as const satisfies readonly VerbRule[];
