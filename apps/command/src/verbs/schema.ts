import { planJsonSchema } from "@leeway/core";
import { exitCodes } from "../exitCodes.ts";
import { printJson } from "../output.ts";

/** Prints the JSON Schema of the plan document. */
export function schemaVerb(): number {
  printJson(planJsonSchema());
  return exitCodes.done;
}
