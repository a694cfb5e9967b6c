import { type Problem, removeFromPlan, setInPlan } from "@leeway/core";
import type { Edit } from "./edit.ts";
import { pathSteps } from "./path.ts";

/**
 * The text after the edits, in order; every other character stays, comments included. With a problem the text
 * is as it was before the edit that could not be made.
 */
export function applyEdits(text: string, edits: readonly Edit[]): { text: string; problems: Problem[] } {
  let edited = text;
  for (const { path, value } of edits) {
    const steps = pathSteps(path);
    const result = value === undefined ? removeFromPlan(edited, steps) : setInPlan(edited, steps, value);
    if (result.problems.length > 0) return { text: edited, problems: result.problems };
    edited = result.text;
  }
  return { text: edited, problems: [] };
}
