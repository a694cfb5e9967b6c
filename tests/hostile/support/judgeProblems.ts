import { describeProblem, type Problem } from "@leeway/core";

/** What may be wrong with a document as a whole: there is no place in it to name. */
const OF_THE_WHOLE: ReadonlySet<string> = new Set([
  "missing-key",
  "wrong-type",
  "empty",
  "not-json",
  "too-deep",
  "too-many",
  "too-large",
]);

/** Words of the program, never of a planner. */
const INNER = /\bundefined\b|\bNaN\b|\[object|function /;

/**
 * What is wrong with the problems themselves; empty when each has its place, what came, a rule and a way out, in words
 * and on one line.
 *
 * @param read  What was read: its own words may come back, in an id for instance.
 */
export function faultsOf(problems: readonly Problem[], read = ""): string[] {
  return problems.flatMap((problem) => {
    const { code, severity, path, line, column, received, rule, remedy } = problem;
    const faults: string[] = [];
    const check = (right: boolean, what: string) => {
      if (!right) faults.push(`${what}: ${JSON.stringify(problem).slice(0, 600)}`);
    };
    check(/^[a-z]+(?:-[a-z]+)*$/.test(code), "a code is small words");
    check(severity === "error" || severity === "warning", "a severity");
    check(path !== "" || line !== undefined || OF_THE_WHOLE.has(code), "nowhere");
    check((line === undefined) === (column === undefined), "a line has a column");
    check(line === undefined || (line >= 1 && (column ?? 0) >= 1), "lines count from 1");
    check(received.length <= 80 && !/[\r\n]/.test(received), "what came is one short line");
    check(/^\S.*[.?!)]$/s.test(rule), "a rule is a sentence");
    check(/^\S.*[.?!)]$/s.test(remedy), "a way out is a sentence");
    check(rule.length < 600 && remedy.length < 600, "words are short");
    check(!INNER.test(`${rule} ${remedy}`) || INNER.test(`${received} ${read}`), "inner words");
    check(describeProblem(problem, "FILE").startsWith("FILE"), "told with its file");
    return faults;
  });
}
