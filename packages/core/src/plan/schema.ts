import { planDocument } from "./definition/plan.ts";
import type { Definitions, JsonSchema } from "./definition/type.ts";

/**
 * The JSON Schema (draft 2020-12) of the plan document, from the same definition that reads it. It says what
 * a document's form must be; rules between keys (references, loops, sums) are the reader's alone.
 */
export function planJsonSchema(): Record<string, unknown> {
  const definitions: Definitions = new Map();
  const root = planDocument.schema(definitions);
  const $defs: JsonSchema = Object.fromEntries([...definitions].sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Leeway plan document, format 1",
    ...root,
    $defs,
  };
}
