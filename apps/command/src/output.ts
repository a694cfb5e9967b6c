import { describeProblem, type Problem } from "@leeway/core";
import { plainText } from "./text/plainText.ts";

/** Lists problems on standard error, one a line, each with its place in `file`. */
export function printProblems(problems: readonly Problem[], file?: string): void {
  printNote(
    problems
      .map((problem) => plainText(describeProblem(problem, ofCall(problem) ? undefined : file)))
      .join("\n"),
  );
}

/** Whether a problem is with an option and not with the document. */
function ofCall(problem: Problem): boolean {
  return problem.path.startsWith("--");
}

/** For people, beside the answer: standard error. */
export function printNote(text: string): void {
  process.stderr.write(`${text}\n`);
}

/** The answer, as it is: standard output. */
export function printAnswer(text: string): void {
  process.stdout.write(text);
}

/** One JSON document: two spaces, one newline at the end. */
export function printJson(value: unknown): void {
  printAnswer(`${JSON.stringify(value, undefined, 2)}\n`);
}
