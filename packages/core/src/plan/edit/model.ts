import type { Json } from "../source/toJson.ts";

/** A place in a document: keys and positions from the top. */
export type EditPath = readonly (string | number)[];

/** What an edit does: put a value at a place, take it away, or add it to a list: before place `before`, else at its end. */
export type Edit =
  | { kind: "set"; path: EditPath; value: Json }
  | { kind: "remove"; path: EditPath }
  | { kind: "add"; path: EditPath; value: Json; before?: number };

/** The edit cannot be made, with the place where the way ended. */
export class NoSuchPlace extends Error {
  at: EditPath;
  constructor(at: EditPath) {
    super("no such place");
    this.at = at;
  }
}

type JsonObject = { [key: string]: Json };
export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Follows a path through a document. In a list a number is a position and a text is an `id` (or the `name`
 * of a phase); a single item standing in for a list is its position 0.
 *
 * @returns The exact path, keys of objects and positions only.
 */
export function exactPath(document: Json, path: EditPath): EditPath {
  const exact: (string | number)[] = [];
  let value: Json | undefined = document;
  for (const [depth, step] of path.entries()) {
    if (Array.isArray(value)) {
      const index: number =
        typeof step === "number"
          ? step
          : value.findIndex((item) => isObject(item) && (item.id ?? item.name) === step);
      if (index < 0 || index > value.length || !Number.isInteger(index))
        throw new NoSuchPlace(path.slice(0, depth + 1));
      exact.push(index);
      value = value[index];
    } else if (isObject(value)) {
      if (step === 0 || (typeof step === "string" && depth > 0 && standsAlone(value, step, path[depth - 1])))
        continue;
      if (typeof step !== "string") throw new NoSuchPlace(path.slice(0, depth + 1));
      exact.push(step);
      value = Object.hasOwn(value, step) ? value[step] : undefined;
    } else if (value === undefined && typeof step === "string") exact.push(step);
    else if (value === undefined || step !== 0) throw new NoSuchPlace(path.slice(0, depth + 1));
  }
  return exact;
}

/** `["risks", "rain"]` where `risks` holds the one risk itself. */
function standsAlone(value: JsonObject, step: string, list: string | number | undefined): boolean {
  return typeof list === "string" && list.endsWith("s") && (value.id ?? value.name) === step;
}

/** The document after an edit along an exact path. The given one stays as it is. */
export function edited(document: Json | undefined, edit: Edit): Json {
  const [step, ...rest] = edit.path;
  if (step === undefined) {
    if (edit.kind === "set") return edit.value;
    if (edit.kind === "remove") throw new NoSuchPlace([]);
    if (document === undefined) return [edit.value];
    const list = Array.isArray(document) ? document : [document];
    return list.toSpliced(edit.before ?? list.length, 0, edit.value);
  }
  const inner = { ...edit, path: rest };
  const last = rest.length === 0 && edit.kind === "remove";
  if (Array.isArray(document) && typeof step === "number") {
    const copy = [...document];
    if (last) {
      if (step >= copy.length) throw new NoSuchPlace([step]);
      copy.splice(step, 1);
    } else copy[step] = edited(copy[step], inner);
    return copy;
  }
  if (document !== undefined && !isObject(document)) throw new NoSuchPlace([step]);
  const copy: JsonObject = Object.assign(Object.create(null), document);
  if (last) {
    if (document === undefined || !Object.hasOwn(document, step)) throw new NoSuchPlace([step]);
    delete copy[step];
  } else copy[step] = edited(Object.hasOwn(copy, step) ? copy[step] : undefined, inner);
  return copy;
}
