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

/** What JSON may say as it is and a terminal obeys: DEL and C1 controls, marks that turn what follows, lines of Unicode. */
const LOUD = /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** One JSON document: two spaces, one newline at the end. What a terminal would obey is written as its code: the same text. */
export function jsonText(value: object): string {
  const text = JSON.stringify(value, undefined, 2);
  return `${text.replace(LOUD, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`)}\n`;
}
