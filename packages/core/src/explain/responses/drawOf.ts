import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { Design } from "../../sampling/design.ts";
import type { Draw } from "../variants.ts";

/** What runs of scenarios are told; defaults are the plan's own, and `latin-hypercube`. */
export interface RunOptions {
  confidence?: number;
  iterations?: number;
  seed?: string;
  design?: Design;
  /** Ids taken in and left out before the question is asked, as for `forecast`. */
  with?: readonly string[];
  without?: readonly string[];
  onProgress?: (done: number, total: number) => void;
}

/** The draws of a forecast with these options. */
export function drawOf(plan: Plan, { iterations, seed, design }: RunOptions): Draw {
  return {
    seed: seed ?? plan.seed,
    design: design ?? "latin-hypercube",
    iterations: iterations ?? plan.iterations,
  };
}

/** The plan format's own limit. */
const mostIterations = 10_000_000;

/** Options that mean nothing, all at once. */
export function runProblems({ confidence, iterations, design }: RunOptions): Problem[] {
  const problems: Problem[] = [];
  const report = (path: string, received: unknown, rule: string, remedy: string) =>
    problems.push({
      code: "option-value",
      severity: "error",
      path,
      received: String(received),
      rule,
      remedy,
    });
  if (confidence !== undefined && !(confidence > 0 && confidence < 1)) {
    report("--confidence", confidence, "It must be above 0 and below 1.", "Write e.g. 0.8.");
  }
  if (
    iterations !== undefined &&
    !(Number.isInteger(iterations) && iterations >= 1 && iterations <= mostIterations)
  ) {
    const rule = `It must be a whole number from 1 to ${mostIterations}.`;
    report("--iterations", iterations, rule, "Write e.g. 10000.");
  }
  if (design !== undefined && design !== "latin-hypercube" && design !== "plain") {
    report("--design", design, "There is no such design.", "Write latin-hypercube or plain.");
  }
  return problems;
}
