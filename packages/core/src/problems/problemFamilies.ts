import { askingProblems } from "./rules/askingProblems.ts";
import { editingProblems } from "./rules/editingProblems.ts";
import { estimateProblems } from "./rules/estimateProblems.ts";
import { formProblems } from "./rules/formProblems.ts";
import { moneyProblems } from "./rules/moneyProblems.ts";
import { nameProblems } from "./rules/nameProblems.ts";
import { peopleProblems } from "./rules/peopleProblems.ts";
import { progressProblems } from "./rules/progressProblems.ts";
import { registerProblems } from "./rules/registerProblems.ts";
import { signingProblems } from "./rules/signingProblems.ts";
import { tableProblems } from "./rules/tableProblems.ts";
import { taskProblems } from "./rules/taskProblems.ts";
import { textProblems } from "./rules/textProblems.ts";
import type { ProblemFamily } from "./types.ts";

/** Every code a problem or a refusal of the library can have, once, in the order of the page `docs/errors.md`. */
export const problemFamilies: readonly ProblemFamily[] = [
  { title: "The text", rules: textProblems },
  { title: "The form of the document", rules: formProblems },
  { title: "Names and what they point at", rules: nameProblems },
  { title: "Tasks and links", rules: taskProblems },
  { title: "Estimates", rules: estimateProblems },
  { title: "People, calendars and correlations", rules: peopleProblems },
  { title: "The register", rules: registerProblems },
  { title: "Money, benefits, quality and sign-off in the plan", rules: moneyProblems },
  { title: "Progress", rules: progressProblems },
  { title: "Tables", rules: tableProblems },
  { title: "What is asked of a plan", rules: askingProblems },
  { title: "Editing a plan's text", rules: editingProblems },
  { title: "Signing, objections and changes", rules: signingProblems },
];
