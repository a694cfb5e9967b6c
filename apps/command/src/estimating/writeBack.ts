import { type Problem, readPlan } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import type { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { unwritable } from "../history/unwritable.ts";
import { writePlan } from "../history/writePlan.ts";
import { printAnswer, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import type { GivenPlan } from "./givenPlan.ts";

/**
 * Puts the changed text of a plan where it came from, whole or not at all; of standard input, on standard output. The
 * text is read again first: what would not be a plan any more is never written.
 *
 * @returns Whether it was written.
 */
export async function writeBack({ name, text: before }: GivenPlan, text: string): Promise<boolean> {
  const problem = await problemOf(name, before, text);
  if (problem !== undefined) printProblems([problem]);
  return problem === undefined;
}

/** A plan from standard input goes back to standard output, where there is no room for JSON beside it. */
export function outputClash(call: Call, values: OptionValues): Problem[] {
  if (call.subject !== "-" || !values.has("json") || values.has("dry-run")) return [];
  const rule = "Standard output is the changed plan's, since it came from standard input.";
  return [
    callProblem("output-clash", "--json", rule, "Leave it out, add --dry-run, or name the plan's file."),
  ];
}

/** Where the change went, for a sentence. */
export function writtenTo(name: string): string {
  return name === "standard input" ? "Written to standard output" : `Written to ${name}`;
}

async function problemOf(name: string, before: string, text: string): Promise<Problem | undefined> {
  if (readPlan(text).plan === undefined) {
    const rule = "With this change it would not be a plan any more; it stays as it was.";
    return callProblem("cannot-edit", name, rule, "Change it in the text.");
  }
  await hearStops();
  if (name === "standard input") {
    printAnswer(text);
    return undefined;
  }
  if (text === before) return undefined;
  try {
    if (await writePlan(name, before, text)) return undefined;
    const rule = "Somebody changed it meanwhile; nothing was written.";
    return callProblem("changed-meanwhile", name, rule, "Look at it, and try again.");
  } catch (error) {
    return unwritable(name, error);
  }
}
