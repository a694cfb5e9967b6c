import { type PlanChange, type Problem, setManyInPlan, swapInPlan } from "@leeway/core";
import type { Edit } from "./edit.ts";
import { pathSteps } from "./path.ts";

/**
 * The text after the edits, in order; every other character stays, comments included. With a problem the text
 * is as it was before the edits that could not be made.
 */
export function applyEdits(text: string, edits: readonly Edit[]): { text: string; problems: Problem[] } {
  let edited = text;
  let rest = [...edits];
  while (rest.length > 0) {
    const [first] = rest;
    const end = first?.swap !== undefined ? 1 : rest.findIndex((edit) => edit.swap !== undefined);
    const together = rest.slice(0, end < 0 ? undefined : end);
    rest = end < 0 ? [] : rest.slice(end);
    const result =
      first?.swap === undefined
        ? setManyInPlan(edited, together.map(change))
        : swapInPlan(edited, pathSteps(first.path), first.swap, first.to);
    if (result.problems.length > 0) return { text: edited, problems: result.problems };
    edited = result.text;
  }
  return { text: edited, problems: [] };
}

/** What the page puts into a plan is text, numbers, lists and objects of them. */
function change({ path, value, add }: Edit): PlanChange {
  const steps = pathSteps(path);
  return { path: steps, value: value as PlanChange["value"], ...(add === undefined ? {} : { add }) };
}
