import { callProblem } from "../call/callProblem.ts";
import type { PlanFile } from "../history/planFile.ts";
import { unwritable } from "../history/unwritable.ts";
import { writePlan } from "../history/writePlan.ts";
import { printNote, printProblems } from "../output.ts";

/**
 * Writes the plan anew where it still says what was read; what went wrong is printed.
 *
 * @param before  Done first: what it cannot do keeps the plan from being written.
 */
export async function writeEntry(
  file: PlanFile,
  text: string,
  before: () => void = () => {},
): Promise<boolean> {
  try {
    before();
    if (await writePlan(file.path, file.text, text)) return true;
    const rule = "Somebody changed it meanwhile; nothing was written.";
    printProblems([callProblem("changed-meanwhile", file.path, rule, "Look at it, and try again.")]);
  } catch (error) {
    printProblems([unwritable(file.path, error)]);
    printNote("Nothing was written.");
  }
  return false;
}
