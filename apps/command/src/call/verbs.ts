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
  word?: { name: string; means: string };
  options: OptionRule[];
  /** Further lines for `help VERB`. */
  notes?: string;
}

const planWords = { 0: "", 1: " PLAN", 2: " OLD NEW" } as const;

/** What stands after a verb, as help writes it. */
export function wordsAfter({ plans, word }: VerbRule): string {
  return `${planWords[plans]}${word === undefined ? "" : ` ${word.name}`}`;
}

const json: OptionRule = { name: "json", help: "one JSON document on standard output and nothing else" };

/** Every verb there is. `help`, the check of the call and its suggestions all read this list. */
export const verbs: readonly VerbRule[] = [
  {
    name: "forecast",
    summary: "finish and cost with their chances, and what drives them",
    plans: 1,
    options: [
      json,
      { name: "charts", value: "DIR", help: "write the charts as SVG files into DIR" },
      { name: "tornado", help: "also what each uncertain item does alone, low and high" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      {
        name: "within",
        value: "DAYS",
        help: "double the futures until the limits of the committed finish are this close",
      },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
      { name: "workers", value: "N", help: "processor cores to use; never changes a digit" },
      { name: "timing", help: "one JSON line on standard error: seconds per step" },
    ],
  },
  {
    name: "explain",
    summary: "why this much contingency: shares of its causes, step by step, one at a time",
    plans: 1,
    options: [
      json,
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
      { name: "workers", value: "N", help: "processor cores to use; never changes a digit" },
    ],
    notes:
      "Shares add up to the contingency. What would change if a cause alone vanished stands beside them.",
  },
  {
    name: "confidence",
    summary: "why this level: what each step buys and costs; date and money together",
    plans: 1,
    options: [
      json,
      { name: "joint", value: "P", help: "the chance of date and sum together that is wanted, e.g. 0.7" },
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
    ],
    notes:
      "A step's cost is the extra money held for it and nothing else; lateness counts when the plan prices it.",
  },
  {
    name: "responses",
    summary: "what each response costs and buys; the best set for a sum",
    plans: 1,
    options: [
      json,
      { name: "sum", value: "MONEY", help: "also: which responses to adopt with this much money" },
      {
        name: "aim",
        value: "WHAT",
        help: "... for the earliest date, the best chance or most worth: date, chance, worth",
      },
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out beforehand risks, optional scope, adopted responses; ids with commas",
      },
      {
        name: "with",
        value: "IDS",
        repeats: true,
        help: "take in beforehand responses that are not adopted",
      },
      { name: "workers", value: "N", help: "processor cores to use; never changes a digit" },
    ],
    notes:
      "Each response is run with and without, on the same draws: alone, and with the adopted ones as they are.\n" +
      "Net worth is the mean money it saves (risks, running costs, lateness where the plan prices it) less its cost.",
  },
  {
    name: "reach",
    summary: "what it would take to make a date or a sum",
    plans: 1,
    options: [
      json,
      {
        name: "by",
        value: "DATE",
        help: "the date to make, e.g. 2027-10-01 (default: the plan's, with its budget)",
      },
      { name: "sum", value: "MONEY", help: "the sum to keep (default: the plan's, with its date)" },
      {
        name: "confidence",
        value: "P",
        help: "how sure, above 0 and below 1, e.g. 0.8 (default: the plan's)",
      },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out beforehand risks, optional scope, adopted responses; ids with commas",
      },
      {
        name: "with",
        value: "IDS",
        repeats: true,
        help: "take in beforehand responses that are not adopted",
      },
      { name: "workers", value: "N", help: "processor cores to use; never changes a digit" },
    ],
    notes:
      "It looks among responses not adopted yet, scope that is `optional` and capacity that people `couldAdd`.\n" +
      "Scope is dropped only where money alone does not do it; a way that costs less but drops more is shown beside it.",
  },
  {
    name: "people",
    summary: "load against capacity, who waits for whom, what an absence does",
    plans: 1,
    options: [
      json,
      { name: "person", value: "ID", help: "one person week by week" },
      { name: "lose", value: "ID", help: "what it does to the commitment when this person is away" },
      { name: "lose-each", help: "... everybody in turn, the worst first" },
      { name: "days", value: "N", help: "... for how many of their working days, 1 to 366" },
      { name: "from", value: "DATE", help: "... from when (default: where they are needed most)" },
      { name: "part", value: "P", help: "... only this part of the capacity, e.g. 0.5 (default: all of it)" },
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
    ],
  },
  {
    name: "paths",
    summary: "which chains of tasks set the finish, and what is at stake near them",
    plans: 1,
    options: [
      json,
      { name: "indices", help: "also the trade's indices of each task" },
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
    ],
  },
  {
    name: "why",
    summary: "what holds a task's start, link by link and person by person",
    plans: 1,
    word: { name: "TASK", means: "a task's id" },
    options: [
      json,
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
    ],
  },
  {
    name: "future",
    summary: "one future replayed: what occurred, when, why, and what it cost",
    plans: 1,
    options: [
      json,
      { name: "iteration", value: "N", help: "which future, counted from 1" },
      {
        name: "at",
        value: "P",
        help: "the first that finishes where this share of them has (default: the level committed to)",
      },
      { name: "draws", help: "also every draw that counted" },
      { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the plan's)" },
      { name: "design", value: "NAME", help: "how futures are drawn: latin-hypercube or plain" },
      {
        name: "without",
        value: "IDS",
        repeats: true,
        help: "leave out risks, optional scope, adopted responses; ids with commas",
      },
      { name: "with", value: "IDS", repeats: true, help: "take in responses that are not adopted" },
    ],
  },
  {
    name: "compare",
    summary: "what moved the commitment between two plans",
    plans: 2,
    options: [
      json,
      { name: "iterations", value: "N", help: "how many futures (default: the new plan's)" },
      { name: "seed", value: "TEXT", help: "another seed (default: the new plan's)" },
      { name: "confidence", value: "P", help: "level committed to, above 0 and below 1, e.g. 0.8" },
      { name: "workers", value: "N", help: "processor cores to use; never changes a digit" },
    ],
    notes:
      "Both plans run on the same draws, with the new plan's seed; changes are found by id, and by `was`\n" +
      "where something was renamed. The moves add up to the difference.",
  },
  {
    name: "check",
    summary: "findings about the plan itself; nothing is simulated",
    plans: 1,
    options: [
      json,
      {
        name: "fail-on",
        value: "LEVEL",
        help: "end with code 1 on findings of that severity or worse: error, warning or note",
      },
    ],
  },
  {
    name: "schema",
    summary: "the JSON Schema of the plan document",
    plans: 0,
    options: [],
    notes: "Point an editor at it to have a plan checked and completed while you type.",
  },
  {
    name: "new",
    summary: "a starter plan from a few questions",
    plans: 0,
    options: [
      { name: "yes", help: "ask nothing; a commented plan to change" },
      { name: "title", value: "TEXT", help: "the plan's title" },
      { name: "start", value: "DATE", help: "first day on which work may happen, e.g. 2027-02-01" },
      { name: "currency", value: "CODE", help: "three letters, e.g. EUR" },
      { name: "out", value: "FILE", help: "write to FILE (default: standard output)" },
      { name: "force", help: "overwrite FILE" },
    ],
  },
  { name: "help", summary: "this list, or one verb: help VERB", plans: 0, options: [] },
];
