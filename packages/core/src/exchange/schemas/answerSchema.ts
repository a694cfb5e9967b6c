import { planJsonSchema } from "../../plan/schema.ts";
import { ANSWER_SCHEMAS } from "./answerSchemas.ts";

export type SchemaName = "plan" | keyof typeof ANSWER_SCHEMAS;

/** What has a published schema: the plan document, and what each of these verbs prints with `--json`. */
export const SCHEMA_NAMES = ["plan", ...Object.keys(ANSWER_SCHEMAS)] as readonly SchemaName[];

/**
 * The JSON Schema (draft 2020-12) of the plan document or of an answer. Numbers in it have the units that the type of
 * the answer states: days since the plan's start, working days of its calendar, money in its currency.
 */
export function jsonSchemaOf(name: SchemaName): Record<string, unknown> {
  return name === "plan" ? planJsonSchema() : ANSWER_SCHEMAS[name];
}
