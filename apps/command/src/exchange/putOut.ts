import { callProblem } from "../call/callProblem.ts";
import { exitCodes } from "../exitCodes.ts";
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
    const taken = error instanceof Error && "code" in error && error.code === "EEXIST";
    const why = error instanceof Error ? error.message : String(error);
    const [rule, remedy] = taken
      ? ["There is such a file already.", "Add --force to overwrite it."]
      : [`It could not be written (${why}).`, "Choose another place."];
    printProblems([callProblem(taken ? "file-exists" : "unwritable", out, rule, remedy)]);
    return exitCodes.invalid;
  }
  printNote(`Wrote ${out}: ${said}.`);
  return exitCodes.done;
}
