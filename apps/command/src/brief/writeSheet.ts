import { whyNotWritten } from "../files/whyNotWritten.ts";
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
    printProblems([whyNotWritten(path, error)]);
    return false;
  }
  printNote(`Wrote ${path}.`);
  return true;
}
