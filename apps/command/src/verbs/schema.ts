import { jsonSchemaOf, SCHEMA_NAMES } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";
import { exitCodes } from "../exitCodes.ts";
import { jsonText, printAnswer, printProblems } from "../output.ts";

/** Prints the JSON Schema of the plan document, or of what a verb prints with `--json`. */
export function schemaVerb(what = "plan"): number {
  const name = SCHEMA_NAMES.find((each) => each === what);
  if (name === undefined) {
    const near = nearest(what, SCHEMA_NAMES);
    const remedy = near === undefined ? `Write one of: ${SCHEMA_NAMES.join(", ")}.` : `Did you mean ${near}?`;
    printProblems([callProblem("unknown-schema", what, "There is no schema of that.", remedy)]);
    return exitCodes.invalid;
  }
  printAnswer(jsonText(jsonSchemaOf(name)));
  return exitCodes.done;
}
