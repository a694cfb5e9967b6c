import type { AnswersByVerb } from "./answers.ts";

/** An answer whose JSON Schema is published. */
export type SchemaName = "plan" | keyof AnswersByVerb;

/** Every answer, in the order in which they are listed. Apart from the schemas, which are long: most calls need no more. */
const answers: Readonly<Record<keyof AnswersByVerb, true>> = {
  forecast: true,
  verify: true,
  explain: true,
  responses: true,
  reach: true,
  assumptions: true,
  people: true,
  paths: true,
  confidence: true,
  money: true,
  future: true,
  why: true,
  compare: true,
  brief: true,
  sign: true,
  approvals: true,
  object: true,
  change: true,
  record: true,
  history: true,
  triggers: true,
  check: true,
  interview: true,
  pool: true,
  sheet: true,
  detail: true,
  scorecard: true,
  uplift: true,
  export: true,
  import: true,
  inform: true,
  roles: true,
};

/** What has a published schema: the plan document, and what each of these verbs prints with `--json`. */
export const SCHEMA_NAMES = ["plan", ...Object.keys(answers)] as readonly SchemaName[];
