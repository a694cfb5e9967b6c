import type { Edit } from "./edit.ts";
import { pathSteps, type Step } from "./path.ts";

/**
 * The document as plain data after the edits; parts they do not touch are shared with the old one. Undefined where
 * a path does not lead plainly through maps and lists: what is meant then, the text's own editor decides.
 */
export function withEdits(stated: unknown, edits: readonly Edit[]): unknown {
  let data = stated;
  for (const { path, value } of edits) {
    data = changed(data, pathSteps(path), value);
    if (data === undefined) return undefined;
  }
  return data;
}

function changed(at: unknown, [step, ...rest]: readonly Step[], value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(at)) {
    if (typeof step !== "number" || step >= at.length) return undefined;
    const inner = changed(at[step], rest, value);
    return inner === undefined ? undefined : at.with(step, inner);
  }
  if (typeof at !== "object" || at === null || typeof step !== "string") return undefined;
  const entries = Object.entries(at);
  const place = entries.findIndex(([key]) => key === step);
  if (rest.length === 0 && value === undefined) {
    return place < 0 ? undefined : Object.fromEntries(entries.toSpliced(place, 1));
  }
  if (place < 0) {
    // A key that is new on the last step of the way; a longer way is the editor's to build.
    return rest.length > 0 ? undefined : Object.fromEntries([...entries, [step, value]]);
  }
  const inner = changed(entries[place]?.[1], rest, value);
  return inner === undefined ? undefined : Object.fromEntries(entries.with(place, [step, inner]));
}
