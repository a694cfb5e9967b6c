import { removeFromPlan, setInPlan } from "@leeway/core";
import type { Edit } from "./edit.ts";

/** The text after the edits, in order; comments and order of the document stay. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let edited = text;
  for (const { path, value } of edits) {
    edited = value === undefined ? removeFromPlan(edited, path) : setInPlan(edited, path, value);
  }
  return edited;
}
