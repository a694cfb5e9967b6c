import type { Edit } from "./edit.ts";
import { pathSteps, type Step } from "./path.ts";

/**
 * The document as plain data after the edits; parts they do not touch are shared with the old one. Undefined where
 * a path does not lead plainly through maps and lists: what is meant then, the text's own editor decides.
 */
export function withEdits(stated: unknown, edits: readonly Edit[]): unknown {
  let data = stated;
  for (const edit of edits) {
    const { path, value, add, swap } = edit;
    data =
      add === undefined && swap === undefined
        ? changed(data, pathSteps(path), value)
        : listChanged(data, pathSteps(path), edit);
    if (data === undefined) return undefined;
  }
  return data;
}

/** An item more in the list at the end of the path, or two that changed places. */
function listChanged(at: unknown, steps: readonly Step[], { value, add, swap, to }: Edit): unknown {
  const list = steps.reduce(
    (inner: unknown, step) =>
      typeof inner === "object" && inner !== null && Object.hasOwn(inner, step)
        ? Reflect.get(inner, step)
        : undefined,
    at,
  );
  if (swap !== undefined) {
    const place = to ?? swap + 1;
    if (!Array.isArray(list) || place >= list.length || swap >= list.length) return undefined;
    return changed(at, steps, list.toSpliced(swap, 1).toSpliced(place, 0, list[swap]));
  }
  if (list === undefined) return changed(at, steps, [value]);
  if (!Array.isArray(list)) return undefined;
  return changed(at, steps, list.toSpliced(typeof add === "number" ? add : list.length, 0, value));
}

function changed(at: unknown, [step, ...rest]: readonly Step[], value: unknown): unknown {
  if (step === undefined) return value;
  // A single item that stands in for a list is its place 0.
  if (step === 0 && at !== undefined && at !== null && !Array.isArray(at)) {
    return rest.length === 0 ? value : changed(at, rest, value);
  }
  if (Array.isArray(at)) {
    if (typeof step !== "number" || step >= at.length) return undefined;
    // The last of a list is taken away with care for its key: that is the editor's.
    if (rest.length === 0 && value === undefined) return at.length === 1 ? undefined : at.toSpliced(step, 1);
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
