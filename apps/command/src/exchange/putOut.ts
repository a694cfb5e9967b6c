import { exitCodes } from "../exitCodes.ts";
import { whyNotWritten } from "../files/whyNotWritten.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { printAnswer, printNote, printProblems } from "../output.ts";

/** Text to standard output, or into a file, whole or not at all. Answers the exit code. */
export function putOut(text: string, out: string | undefined, force: boolean, said: string): number {
  if (out === undefined) {
    printAnswer(text);
    return exitCodes.done;
  }
  try {
    writeWhole(out, text, force);
  } catch (error) {
    printProblems([whyNotWritten(out, error)]);
    return exitCodes.invalid;
  }
  printNote(`Wrote ${out}: ${said}.`);
  return exitCodes.done;
}
