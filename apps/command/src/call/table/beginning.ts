import { SCHEMA_NAMES } from "@leeway/core";
import type { VerbRule } from "../verbRule.ts";

/** What needs no plan yet, and the page. */
export const beginning = [
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
