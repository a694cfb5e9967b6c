import { planJsonSchema } from "../../plan/schema.ts";
import { ANSWER_SCHEMAS } from "./answerSchemas.ts";

/** An answer whose JSON Schema is published. */
export type SchemaName = "plan" | keyof typeof ANSWER_SCHEMAS;

/** What has a published schema: the plan document, and what each of these verbs prints with `--json`. */
export const SCHEMA_NAMES = ["plan", ...Object.keys(ANSWER_SCHEMAS)] as readonly SchemaName[];

/**
 * The JSON Schema (draft 2020-12) of the plan document or of an answer. Every number of an answer has
 * its unit in its description, by the words of `units.ts`; no answer has a key that its schema does not name.
 */
export function jsonSchemaOf(name: SchemaName): Record<string, unknown> {
  return name === "plan" ? planJsonSchema() : JSON.parse(ANSWER_SCHEMAS[name]);
}
