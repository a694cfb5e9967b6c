import { callProblem } from "../call/callProblem.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { printNote, printProblems } from "../output.ts";

/**
 * Writes a brief to a file, whole or not at all.
 *
 * @param force  Without it an existing file stands, so that no plan is written over by mistake.
 * @returns false when it could not be written, after saying so
 */
export function writeSheet(path: string, text: string, force: boolean): boolean {
  try {
    writeWhole(path, text, force);
  } catch (error) {
    const taken = error instanceof Error && "code" in error && error.code === "EEXIST";
    const reason = error instanceof Error ? error.message : String(error);
    printProblems([
      taken
        ? callProblem("file-exists", path, "There is such a file already.", "Add --force to overwrite it.")
        : callProblem("unwritable", path, `It could not be written (${reason}).`, "Choose another place."),
    ]);
    return false;
  }
  printNote(`Wrote ${path}.`);
  return true;
}
