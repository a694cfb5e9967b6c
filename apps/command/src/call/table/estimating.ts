import { common, drawn } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

/** Estimates made with the team, and what became of them. */
export const estimating = [
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
] as const satisfies readonly VerbRule[];
