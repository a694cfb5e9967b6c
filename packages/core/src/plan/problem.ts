/**
 * A problem is a value: where, what came, the rule, the way out. Reading collects all of them.
 */
export interface Problem {
  /** Stable and kebab-case, e.g. `unknown-key`, `estimate-order`, `loop`. */
  code: string;
  severity: "error" | "warning";
  /** Where in the document, e.g. `tasks[3].after[0].lag`; empty for the whole. */
  path: string;
  /** 1-based, where the text is known. */
  line?: number;
  column?: number;
  /** What came, shortened. */
  received: string;
  /** The rule it breaks, one sentence. */
  rule: string;
  /** What would be right, one sentence. */
  remedy: string;
}

/** One line a planner can act on: place, what came, the rule, the way out. */
export function describeProblem(problem: Problem, file?: string): string {
  const place = [file, problem.line, problem.column].filter((part) => part !== undefined).join(":");
  const where = [place, problem.path].filter((part) => part !== "").join(" ");
  const came = problem.received === "" ? "" : ` ${problem.received}:`;
  return `${where === "" ? "plan" : where}:${came} ${problem.rule} ${problem.remedy}`.trim();
}
