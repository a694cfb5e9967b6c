import { type AnswersByVerb, describeProblem, type Problem } from "@leeway/core";
import { plainText } from "./text/plainText.ts";

/** Lists problems on standard error, one a line, each with its place in `file` and the code that `help` explains. */
export function printProblems(problems: readonly Problem[], file?: string): void {
  printNote(
    problems
      .map((problem) => {
        const text = plainText(describeProblem(problem, ofCall(problem) ? undefined : file));
        return `${text}  [${problem.code}]`;
      })
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

export type AnyAnswer = AnswersByVerb[keyof AnswersByVerb];

/** The answer as one JSON document. Its type has to be named: it is one that has a published schema. */
export function printJson<A extends AnyAnswer = never>(answer: NoInfer<A>): void {
  printAnswer(jsonText(answer));
}

/** One JSON document: two spaces, one newline at the end. */
export function jsonText(value: object): string {
  return `${JSON.stringify(value, undefined, 2)}\n`;
}
