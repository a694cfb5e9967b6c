import { common } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

/** What is to be said about a plan. */
export const findings = [
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
] as const satisfies readonly VerbRule[];
