import { common, drawn } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

/** What leaves the plan and comes back, and who is told of what. */
export const exchange = [
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
] as const satisfies readonly VerbRule[];
