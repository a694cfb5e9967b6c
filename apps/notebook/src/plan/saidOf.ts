import type { Edit } from "./edit.ts";
import { data, place } from "./removeTask.ts";
import { statedAt } from "./stated.ts";

/**
 * An edit of an item of a list which may be written as its id alone, as this document needs it: the item becomes an object
 * only when more is said of it, and an id again once nothing more is. What else is said of it stays. Made where the edits
 * are, as two of them may be asked for before the page hears of the first.
 *
 * @param document  The document as plain data.
 */
export function saidOf(document: unknown, edit: Edit): Edit {
  const [, list, at, key] = /^(.*)\[(\d+)\]\.(\w+)$/.exec(edit.path) ?? [];
  const { names, value } = edit;
  if (names === undefined || list === undefined || key === undefined) return edit;
  const path = place(document, list, Number(at));
  const item = statedAt(document, path);
  if (typeof item === "string")
    return { path, value: value === undefined ? item : { [names]: item, [key]: value } };
  const { [names]: id, [key]: _said, ...rest } = data(item);
  if (value === undefined && Object.keys(rest).length === 0) return { path, value: id };
  return { path: `${path}.${key}`, value };
}
