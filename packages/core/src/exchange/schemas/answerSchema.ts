import { planJsonSchema } from "../../plan/schema.ts";
import { ANSWER_SCHEMAS } from "./answerSchemas.ts";
import type { SchemaName } from "./schemaNames.ts";

/**
 * The JSON Schema (draft 2020-12) of the plan document or of an answer. Every number of an answer has
 * its unit in its description, by the words of `units.ts`; no answer has a key that its schema does not name.
 */
export function jsonSchemaOf(name: SchemaName): Record<string, unknown> {
  return name === "plan" ? planJsonSchema() : JSON.parse(ANSWER_SCHEMAS[name]);
}
