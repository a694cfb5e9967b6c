import type { Node } from "../source/node.ts";
import { readSource } from "../source/readSource.ts";
import { type Json, toJson } from "../source/toJson.ts";
import { addToPlan, type EditPath, type PlanEdit, removeFromPlan, setInPlan } from "./editPlan.ts";
import { type Edit, edited, exactPath, NoSuchPlace } from "./model.ts";
import { splice } from "./splice.ts";

/** A value to set, or with `value` undefined a key to take away. */
export interface PlanChange {
  path: EditPath;
  value: Json | undefined;
  /** The value becomes an item of the list at `path`: before the place given, or last. */
  add?: number | "last";
}

/**
 * Makes many edits of a plan's text as `setInPlan` and `removeFromPlan` make one, in the time of one: the text is read
 * once, and spliced from its end to its beginning, so that what was read of the rest stays true. Where that does not
 * give exactly what was meant, they are made one after the other.
 */
export function setManyInPlan(text: string, changes: readonly PlanChange[]): PlanEdit {
  if (changes.length === 0) return { text, problems: [] };
  const made = atOnce(text, changes);
  return made === undefined ? oneByOne(text, changes) : { text: made, problems: [] };
}

function atOnce(text: string, changes: readonly PlanChange[]): string | undefined {
  const { root, faults } = readSource(text);
  if (root === undefined || faults.length > 0) return undefined;
  let document = toJson(root);
  let edits: Edit[];
  try {
    edits = changes.map(({ path, value, add }): Edit => {
      const exact = exactPath(document, path);
      if (add !== undefined && value !== undefined)
        return { kind: "add", path: exact, value, ...(add === "last" ? {} : { before: add }) };
      return value === undefined ? { kind: "remove", path: exact } : { kind: "set", path: exact, value };
    });
    for (const edit of edits) document = edited(document, edit);
  } catch (error) {
    if (error instanceof NoSuchPlace) return undefined;
    throw error;
  }
  const json = /^\uFEFF?\s*[{[]/.test(text) && isJson(text);
  const ordered = edits
    .map((_, index) => {
      const own = asItCame(edits, index);
      return { edit: own, index, at: placeOf(root, own) };
    })
    // At one place the last goes first, so that those before it come to stand before it.
    .sort((a, b) => b.at - a.at || b.index - a.index);
  let now = text;
  for (const { edit } of ordered) {
    const next = splice(now, root, edit, json);
    if (next === undefined) return undefined;
    now = next;
  }
  const read = readSource(now);
  const said = read.root !== undefined && read.faults.length === 0 ? toJson(read.root) : undefined;
  return JSON.stringify(said) === JSON.stringify(document) ? now : undefined;
}

/** An item that is added behind others added before it: where it goes in the text that does not have those yet. */
function asItCame(edits: readonly Edit[], index: number): Edit {
  const edit = edits[index] as Edit; // an index of its own list
  if (edit.kind !== "add" || edit.before === undefined) return edit;
  const list = JSON.stringify(edit.path);
  const ahead = edits
    .slice(0, index)
    .filter((other) => other.kind === "add" && JSON.stringify(other.path) === list);
  return { ...edit, before: Math.max(0, edit.before - ahead.length) };
}

/** Where an edit touches the text: at the key it changes, or behind the last of the object it adds one to. */
function placeOf(root: Node, edit: Edit): number {
  const path = edit.kind === "add" && edit.before !== undefined ? [...edit.path, edit.before] : edit.path;
  let node = root;
  for (const step of path) {
    if (node.kind === "map" && typeof step === "string") {
      const entry = node.entries.get(step);
      if (entry === undefined) return endOf(node);
      node = entry.node;
    } else if (node.kind === "list" && typeof step === "number") {
      const item = node.items[step];
      if (item === undefined) return endOf(node);
      node = item;
    } else break;
  }
  if (edit.kind === "add" && edit.before === undefined) return endOf(node);
  return node.at;
}

function endOf(node: Node): number {
  if (node.kind === "scalar") return node.end;
  const inner = node.kind === "list" ? node.items : [...node.entries.values()].map((entry) => entry.node);
  return inner.reduce((end, each) => Math.max(end, endOf(each)), node.at);
}

function oneByOne(text: string, changes: readonly PlanChange[]): PlanEdit {
  const done: PlanEdit = { text, problems: [] };
  for (const { path, value, add } of changes) {
    const { text: next, problems } =
      value === undefined
        ? removeFromPlan(done.text, path)
        : add === undefined
          ? setInPlan(done.text, path, value)
          : addToPlan(done.text, path, value, add === "last" ? undefined : add);
    done.text = next;
    done.problems.push(...problems);
  }
  return done;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text.replace(/^\uFEFF/, ""));
    return true;
  } catch {
    return false;
  }
}
