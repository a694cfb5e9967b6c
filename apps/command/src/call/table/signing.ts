import { common, drawn } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

/** What approvers read, decide, object to and see changed. */
export const signing = [
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
] as const satisfies readonly VerbRule[];
