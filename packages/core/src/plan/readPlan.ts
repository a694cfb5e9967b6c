import { buildPlan } from "./build/plan.ts";
import { checkDraft } from "./check/checkDraft.ts";
import { planDocument } from "./definition/plan.ts";
import { Reading, STRUCTURAL_CODES } from "./definition/reading.ts";
import { planHashes } from "./hash.ts";
import type { Problem } from "./problem.ts";
import { fromData } from "./source/fromData.ts";
import type { SourceTree } from "./source/node.ts";
import { readSource } from "./source/readSource.ts";
import { toJson } from "./source/toJson.ts";
import type { Plan } from "./types.ts";

/** A correct plan, or none; and every problem found. */
export interface PlanReading {
  /** Present only where no problem is an error. */
  plan?: Plan;
  /** In the order of the document. */
  problems: Problem[];
}

/**
 * Reads a plan document, format 1, from YAML 1.2 or JSON text. Every problem is listed at once, each with
 * its path, line and column. Never throws; time is bounded in proportion to the text.
 *
 * @param text  The whole document.
 */
export function readPlan(text: string): PlanReading {
  return readTree(readSource(text));
}

/** Reads a plan from a JSON value in memory: as `readPlan`, without lines and columns. */
export function planFromData(data: unknown): PlanReading {
  return readTree(fromData(data));
}

function readTree(tree: SourceTree): PlanReading {
  const reading = new Reading(tree);
  for (const fault of tree.faults) reading.reportFault(fault);
  const { root } = tree;
  if (root === undefined) {
    if (tree.faults.length === 0) {
      reading.reportFault({
        code: "empty",
        at: 0,
        received: "",
        rule: "The document is empty.",
        remedy: "Begin with `format: 1`, `title`, `start` and `tasks`.",
      });
    }
    return { problems: reading.problems };
  }

  const before = reading.problems.length;
  const place = { keyAt: root.at, node: root };
  const draft = planDocument.read(place, reading);
  if (tree.brokenFrom !== undefined) {
    // What stands behind a break in the text is guesswork: only what is wrong before it is worth saying.
    const end = tree.brokenFrom;
    const problems = reading.problems.filter((problem, index) => {
      if (index < before) return true;
      const genuine =
        STRUCTURAL_CODES.has(problem.code) && problem.code !== "missing-key" && problem.code !== "too-few";
      return genuine && reading.isBefore(problem, end);
    });
    return { problems: inOrder(problems) };
  }
  if (draft === undefined) return { problems: inOrder(reading.problems) };

  checkDraft(draft, reading);
  const problems = inOrder(reading.problems);
  if (problems.some((problem) => problem.severity === "error")) return { problems };
  return { plan: buildPlan(draft, planHashes(toJson(root))), problems };
}

/** By line and column where known; otherwise as found. */
function inOrder(problems: Problem[]): Problem[] {
  return [...problems].sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
}
