import { SCHEMA_NAMES } from "@leeway/core";
import { common, drawn } from "./commonOptions.ts";

/** One option of a verb, as `help` prints it and the call is checked against. */
export interface OptionRule {
  /** Without the two dashes. */
  name: string;
  /** What stands after it, for help; absent for a switch. */
  value?: string;
  help: string;
  /** May be given more than once. */
  repeats?: boolean;
}
export interface VerbRule {
  name: string;
  /** One line for the list of verbs. */
  summary: string;
  /** How many plans it takes. */
  plans: 0 | 1 | 2;
  /** What it takes after the plan: the word help writes, and what it stands for. */
  word?: {
    name: string;
    means: string;
    /** It may be left out. */
    optional?: true;
    /** There may be many; then it may be left out too. */
    many?: true;
  };
  options: readonly OptionRule[];
  /** Further lines for `help VERB`. */
  notes?: string;
}

const planWords = { 0: "", 1: " PLAN", 2: " OLD NEW" } as const;

/** What stands after a verb, as help writes it. */
export function wordsAfter({ plans, word }: VerbRule): string {
  if (word === undefined) return planWords[plans];
  const open = word.optional === true || word.many === true;
  return `${planWords[plans]} ${open ? `[${word.name}${word.many === true ? " ..." : ""}]` : word.name}`;
}

const beforehand = "What --with and --without name is settled beforehand and not weighed.";

const rows = [
  {
    name: "forecast",
    summary: "finish and cost with their chances, and what drives them",
    plans: 1,
    options: [
      common.json,
      common.charts,
      { name: "tornado", help: "also what each uncertain item does alone, low and high" },
      {
        name: "within",
        value: "DAYS",
        help: "double the futures until the limits of the committed finish are at most so many working days apart",
      },
      common.confidence,
      ...drawn,
      common.workers,
      { name: "timing", help: "also one JSON line on standard error: seconds per step" },
      { name: "verify", value: "FILE", help: "run a saved forecast (its JSON) again, in place of a new one" },
    ],
    notes:
      "--verify takes seed, futures and scenario from FILE and holds every figure against it, to the last bit. It ends with " +
      "code 0 where all are the same, 1 where one is not (the first is named), 2 where FILE is of another plan or no forecast.",
  },
  {
    name: "explain",
    summary: "why this much contingency: what is held for each cause, and how it comes about",
    plans: 1,
    options: [common.json, common.charts, common.confidence, ...drawn, common.workers],
    notes:
      "Contingency is what the commitment holds above the plan as written. The shares of its causes add up to it; " +
      "what would change if a cause alone vanished is another question and stands beside them.",
  },
  {
    name: "confidence",
    summary: "why this level: what each step buys and costs; date and money together",
    plans: 1,
    options: [
      common.json,
      common.charts,
      {
        name: "joint",
        value: "P",
        help: "how sure to be of date and sum together, e.g. 0.7 (default: the level committed to)",
      },
      common.confidence,
      ...drawn,
    ],
    notes:
      "A step's cost is the extra money held for it and nothing else; lateness counts when the plan prices it.",
  },
  {
    name: "responses",
    summary: "what each response to a risk costs and buys; the best set for a sum",
    plans: 1,
    options: [
      common.json,
      common.charts,
      { name: "sum", value: "MONEY", help: "also which responses to adopt with this much money, e.g. 5000" },
      {
        name: "aim",
        value: "WHAT",
        help: "... for the earliest date, the best chance or most worth: date, chance, worth",
      },
      common.confidence,
      ...drawn,
      common.workers,
    ],
    notes:
      "Each response is run with and without, on the same draws: alone, and with the adopted ones as they are. " +
      "Net worth is the mean money it saves (risks, running costs, lateness where the plan prices it) less its cost. " +
      beforehand,
  },
  {
    name: "assumptions",
    summary: "what the plan counts on, and what moves were it false",
    plans: 1,
    options: [
      {
        name: "if-false",
        value: "IDS",
        help: "only these assumptions (default: all that are open)",
      },
      common.json,
      common.confidence,
      ...drawn,
    ],
    notes:
      "Each assumption is supposed false in turn, everything else as it is, on the draws of the plan as it stands. What " +
      "moves is said in days, in money and in the chances of what was asked for.",
  },
  {
    name: "reach",
    summary: "what it would take to make a date or a sum",
    plans: 1,
    options: [
      common.json,
      {
        name: "by",
        value: "DATE",
        help: "the date to make, e.g. 2027-10-01",
      },
      { name: "sum", value: "MONEY", help: "the sum to keep, e.g. 640000" },
      common.confidence,
      ...drawn,
      common.workers,
    ],
    notes:
      "Without --by and --sum it is about the date and the budget that the plan's commitment asks for. " +
      "It looks among responses not adopted yet, scope that is `optional` and capacity that people `couldAdd`. " +
      "Scope is dropped only where money alone does not do it; a way that costs less but drops more is shown beside it. " +
      beforehand,
  },
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
  {
    name: "brief",
    summary: "the approver's page: what to decide, and why; or a pre-brief for one of them",
    plans: 1,
    options: [
      {
        name: "trace",
        value: "WORD",
        help: "in place of the page: where its figures come from whose place or value holds the word; `all` for all",
      },
      common.json,
      {
        name: "format",
        value: "NAME",
        help: "markdown or html, one file that prints on one A4 page (default: html where FILE ends in .html, else markdown)",
      },
      { name: "out", value: "FILE", help: "write to FILE (default: standard output)" },
      { name: "force", help: "overwrite FILE where there is one" },
      { name: "for", value: "ID", help: "what this approver will ask, answered, in place of the brief" },
      { name: "since", value: "OLD", help: "... and what moved since that version of the plan" },
      { name: "today", value: "DATE", help: "the day it is written on, e.g. 2027-02-01 (default: today)" },
      common.confidence,
      ...drawn,
      common.workers,
    ],
    notes:
      "Every figure is one of forecast, explain, responses and confidence on the same futures. What is asked comes from " +
      "the plan's key `decision`; what the plan does not say is said to be missing.",
  },
  {
    name: "sign",
    summary: "bind a decision to the plan as it is",
    plans: 1,
    options: [
      { name: "as", value: "WHO", help: "who decides: an id of the plan (always needed)" },
      { name: "by", value: "WHO", help: "who signs in their place: the delegate the plan names" },
      {
        name: "decision",
        value: "WHAT",
        help: "approve (default), approve-subject-to, or rework to send it back",
      },
      { name: "conditions", value: "TEXT", help: "what the approval is subject to" },
      { name: "conditions-by", value: "DATE", help: "... and the day by which that has to be met" },
      { name: "conditions-met", help: "say that these conditions were met; nothing is signed anew" },
      { name: "accept", value: "IDS", help: "open objections the signer accepts as they stand" },
      { name: "despite-errors", help: "approve although the check finds an error" },
      { name: "dry-run", help: "write nothing; show what would be signed" },
      { name: "today", value: "DATE", help: "the day it is written on (default: today)" },
      common.json,
    ],
    notes:
      "The version is kept in NAME.versions first, then the plan gets the entry. A signature covers the plan until " +
      "anything but progress, approvals, objections and the change log changes. It is a record in a file, no legal signature.",
  },
  {
    name: "approvals",
    summary: "who has signed, whether it still covers the plan, what moved since",
    plans: 1,
    options: [
      common.json,
      {
        name: "signed",
        value: "FILE",
        help: "the version that was signed (default: the one kept beside the plan)",
      },
      { name: "today", value: "DATE", help: "the day it is looked at (default: today)" },
      common.workers,
    ],
  },
  {
    name: "object",
    summary: "objections: log, answer, accept by name, list",
    plans: 1,
    options: [
      { name: "as", value: "WHO", help: "who objects, or who accepts: an id of the plan" },
      { name: "text", value: "TEXT", help: "what is objected, or what is answered" },
      { name: "answer", value: "ID", help: "answer this objection with --text" },
      { name: "evidence", value: "TEXT", help: "... what supports the answer" },
      { name: "changed-plan", help: "... and it changed the plan" },
      { name: "accept", value: "ID", help: "--as WHO accepts that it stands" },
      {
        name: "reopen",
        value: "ID",
        help: "--as WHO opens it again: who raised or accepted it, or who decides on the plan",
      },
      { name: "today", value: "DATE", help: "the day it is written on (default: today)" },
      common.json,
    ],
    notes:
      "Without --text, --answer, --accept and --reopen it lists them. An answer may be bettered by another; what somebody " +
      "accepted stands by their name until it is opened again.",
  },
  {
    name: "change",
    summary: "an entry in the change log: what, why, who agreed",
    plans: 1,
    options: [
      { name: "what", value: "TEXT", help: "what changed (always needed)" },
      { name: "why", value: "TEXT", help: "the reason (always needed)" },
      { name: "as", value: "WHO", help: "who decided it: an id of the plan (always needed)" },
      {
        name: "approved-by",
        value: "WHO",
        help: "who agreed to it: an approver, or their delegate (always needed)",
      },
      { name: "today", value: "DATE", help: "the day it is written on (default: today)" },
      common.json,
    ],
  },
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
  {
    name: "check",
    summary: "findings about the plan itself, before anybody promises by it",
    plans: 1,
    options: [
      common.json,
      {
        name: "fail-on",
        value: "LEVEL",
        help: "end with code 1 on findings of that severity or worse: error, warning or note",
      },
      { name: "as-written", help: "draw no futures, and leave out what depends on chances" },
      {
        name: "today",
        value: "DATE",
        help: "the day on which it is looked at, e.g. 2027-02-01 (default: today)",
      },
      common.iterations,
      common.seed,
      common.workers,
    ],
    notes:
      "A finding says what, where, why it matters, by which source, and what to do. One that was looked at and may stay " +
      "goes into the plan's `acceptedFindings`: it is still listed and no longer counts for --fail-on.",
  },
  {
    name: "interview",
    summary: "ask one person how long or how dear a task would be, and keep what they say",
    plans: 1,
    word: { name: "TASK", means: "a task's id" },
    options: [
      common.json,
      { name: "by", value: "ID", help: "who is asked: a person or stakeholder of the plan (always needed)" },
      { name: "as", value: "WHO", help: "who writes it down, where that is somebody else" },
      { name: "of", value: "WHAT", help: "duration, effort or cost (default: the task's time)" },
      {
        name: "answers",
        value: "FILE",
        help: "take the answers from a JSON file: basis, high, low, likely, dissent",
      },
      { name: "date", value: "DATE", help: "when it was said (default: today)" },
      { name: "dry-run", help: "show what would be written and write nothing" },
    ],
    notes:
      "The ends are asked before the middle, each as one question about one time in ten. Answers are lines on a terminal " +
      "or from a pipe; `back` goes to the question before. What is said is kept as an opinion beside the task's estimate, " +
      "which stays as it is until `leeway pool` settles it.",
  },
  {
    name: "pool",
    summary: "what several people said of a task, together and against each other",
    plans: 1,
    word: { name: "TASK", means: "a task's id", optional: true },
    options: [
      common.json,
      common.charts,
      { name: "of", value: "WHAT", help: "only the opinions on duration, effort or cost" },
      { name: "write", help: "settle TASK's estimate with it, its basis naming the people" },
      { name: "dry-run", help: "with --write: show what would be written and write nothing" },
    ],
    notes:
      "Everybody weighs the same; the values they give at the same chance are averaged. Where ranges have no value in " +
      "common, people may be speaking of different work: an average of that is nobody's estimate.",
  },
  {
    name: "sheet",
    summary: "the questions of the interview as a table for one person, out and back in",
    plans: 1,
    options: [
      common.json,
      { name: "for", value: "ID", help: "write the sheet of this person, as comma-separated values" },
      {
        name: "all",
        help: "... with every task, not only those they have to do with, and costs that are certain",
      },
      { name: "out", value: "FILE", help: "... to FILE (default: standard output)" },
      { name: "force", help: "... overwriting it where it is there" },
      { name: "read", value: "FILE", help: "take a filled sheet into the plan, as opinions" },
      { name: "by", value: "ID", help: "... filled by this person" },
      { name: "as", value: "WHO", help: "... taken in by this one, where that is somebody else" },
      { name: "date", value: "DATE", help: "... on this day (default: today)" },
      { name: "dry-run", help: "... show what would be written and write nothing" },
    ],
    notes:
      "A person's own last answers stand in the sheet, nobody else's. Rows as they were change nothing. A sheet with a " +
      "fault is refused as a whole, every fault with its row and column.",
  },
  {
    name: "detail",
    summary: "outline tasks of an old plan against the detail that replaced them",
    plans: 2,
    options: [common.json, common.iterations, common.seed, common.design],
    notes:
      "Detail names its outline task by `detailOf`. A sum of parts that vary on their own is narrower than one estimate of " +
      "the whole without anybody knowing more; what it would be with the parts moving together stands beside it.",
  },
  {
    name: "scorecard",
    summary: "past estimates against what happened, per estimator",
    plans: 1,
    word: { name: "PAST", means: "further plans", many: true },
    options: [
      common.json,
      common.charts,
      {
        name: "apply-to",
        value: "PLAN",
        help: "also what this plan's forecast would be if its ranges leaned and missed the same way; writes nothing",
      },
      common.confidence,
      common.iterations,
      common.seed,
      common.design,
    ],
    notes:
      "Finished tasks whose time was estimated as a range are scored. Plans of one title are versions of one project: what " +
      "was said is read from the first in which a task had not started, what happened from the last.",
  },
  {
    name: "uplift",
    summary: "an early estimate with an uplift for optimism from past projects, beside the forecast",
    plans: 1,
    options: [
      common.json,
      {
        name: "kind",
        value: "KIND",
        repeats: true,
        help:
          "what is built: non-standard-buildings, standard-buildings, non-standard-civil-engineering, " +
          "standard-civil-engineering, equipment-or-development; several with their parts, KIND=0.3; or with --stage: " +
          "roads, fixed-links, building-projects, it-projects",
      },
      {
        name: "mitigated",
        value: "P",
        help: "the part of the contributing risks shown to be managed, 0 to 1 (default: 0)",
      },
      { name: "stage", value: "N", help: "stage of appraisal, 1 to 3" },
      { name: "management", value: "MONEY", help: "what managing those risks costs, added after the uplift" },
      common.confidence,
      ...drawn,
    ],
    notes:
      "An uplift is for an early estimate without priced risks and is no contingency: never add it to the forecast's. " +
      "Sources stand with the answer.",
  },
  {
    name: "export",
    summary: "parts of the plan and its forecast as tables, calendars and JSON",
    plans: 1,
    options: [
      {
        name: "what",
        value: "WHAT",
        help: "tasks, estimates, register, people, forecast, milestones or communication (always needed)",
      },
      { name: "format", value: "NAME", help: "csv, json or ics (default: csv; of days in a calendar, ics)" },
      { name: "out", value: "FILE", help: "write to FILE (default: standard output)" },
      { name: "force", help: "overwrite FILE where there is one" },
      { name: "today", value: "DATE", help: "the day a calendar is made (default: today)" },
      common.confidence,
      ...drawn,
    ],
    notes:
      "Tables are comma-separated values (RFC 4180) that lose nothing; calendars are iCalendar (RFC 5545). " +
      "What a spreadsheet would take for a formula has an apostrophe ahead of it.",
  },
  {
    name: "import",
    summary: "a table back into the text of the plan, by id",
    plans: 1,
    options: [
      { name: "what", value: "WHAT", help: "tasks, estimates, register or people (always needed)" },
      {
        name: "read",
        value: "FILE",
        help: "the table, as export wrote it and somebody changed it (always needed)",
      },
      { name: "remove-missing", help: "also take out what the table leaves out" },
      {
        name: "as",
        value: "WHO",
        help: "with tasks: who enters them, kept as `enteredBy` of new tasks and new estimates",
      },
      { name: "dry-run", help: "write nothing; show what would change" },
      common.json,
    ],
    notes:
      "Comments and order of the plan stay, and new rows go to the end of their list. With one thing wrong nothing is " +
      "written, and all that is wrong is listed with row and column.",
  },
  {
    name: "inform",
    summary: "who has to be told of what, how and when; also as a calendar",
    plans: 1,
    options: [
      common.json,
      { name: "owner", value: "ID", help: "only what this person or stakeholder sees to" },
      { name: "from", value: "DATE", help: "nothing before this day" },
      { name: "out", value: "FILE", help: "also write the occasions into FILE, a calendar (.ics)" },
      { name: "force", help: "overwrite FILE where there is one" },
      { name: "today", value: "DATE", help: "the day the calendar is made (default: today)" },
      common.confidence,
      ...drawn,
    ],
  },
  {
    name: "roles",
    summary: "who does what, answers for it, is asked and is told",
    plans: 1,
    options: [
      common.json,
      { name: "phases", help: "phases in place of tasks" },
      {
        name: "format",
        value: "NAME",
        help: "csv or markdown: only the matrix, with names over its columns",
      },
      { name: "out", value: "FILE", help: "... written to FILE (default: standard output)" },
      { name: "force", help: "overwrite FILE where there is one" },
    ],
  },
  {
    name: "schema",
    summary: "the JSON Schema of the plan document, for an editor; or of an answer",
    plans: 0,
    word: { name: "WHAT", means: "the name of a schema", optional: true },
    options: [],
    notes:
      "Point your editor at it to have a plan checked and completed while you type. WHAT is plan (default), or a verb: " +
      `everything that is printed as JSON has a schema (${SCHEMA_NAMES.filter((name) => name !== "plan").join(", ")}).`,
  },
  {
    name: "new",
    summary: "a starter plan from a few questions",
    plans: 0,
    options: [
      { name: "yes", help: "ask nothing; a commented plan to change" },
      { name: "title", value: "TEXT", help: "the plan's title" },
      { name: "start", value: "DATE", help: "first day on which work may happen, e.g. 2027-02-01" },
      { name: "currency", value: "CODE", help: "the currency of all sums, three letters, e.g. EUR" },
      { name: "out", value: "FILE", help: "write to FILE (default: standard output)" },
      { name: "force", help: "overwrite FILE where there is one" },
    ],
  },
  {
    name: "open",
    summary: "the notebook on this file: every change is saved to it",
    plans: 1,
    options: [{ name: "port", value: "N", help: "the port to serve it on (default: any that is free)" }],
    notes:
      "It serves on 127.0.0.1 only, at an address with a token that is new each time, and until you stop it. " +
      "What another program writes to the file meanwhile shows on the page.",
  },
  {
    name: "help",
    summary: "this list, one verb: help VERB, or what is behind a problem or finding: help CODE",
    plans: 0,
    options: [],
  },
] as const satisfies readonly VerbRule[];
/** A verb by name: what `main.ts` has to know how to do. */
export type VerbName = (typeof rows)[number]["name"];

/** Every verb there is. `help`, the check of the call and its suggestions all read this list. */
export const verbs: readonly (VerbRule & { name: VerbName })[] = rows;
