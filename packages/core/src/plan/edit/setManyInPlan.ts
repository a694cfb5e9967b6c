import type { Node } from "../source/node.ts";
import { readSource } from "../source/readSource.ts";
import { type Json, toJson } from "../source/toJson.ts";
import { type EditPath, type PlanEdit, removeFromPlan, setInPlan } from "./editPlan.ts";
import { type Edit, edited, exactPath, NoSuchPlace } from "./model.ts";
import { splice } from "./splice.ts";

/** A value to set, or with `value` undefined a key to take away. */
export interface PlanChange {
  path: EditPath;
  value: Json | undefined;
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
    edits = changes.map(({ path, value }): Edit => {
      const exact = exactPath(document, path);
      return value === undefined ? { kind: "remove", path: exact } : { kind: "set", path: exact, value };
    });
    for (const edit of edits) document = edited(document, edit);
  } catch (error) {
    if (error instanceof NoSuchPlace) return undefined;
    throw error;
  }
  const json = /^\uFEFF?\s*[{[]/.test(text) && isJson(text);
  const ordered = edits
    .map((edit, index) => ({ edit, index, at: placeOf(root, edit.path) }))
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

/** Where an edit touches the text: at the key it changes, or behind the last of the object it adds one to. */
function placeOf(root: Node, path: EditPath): number {
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
  return node.at;
}

function endOf(node: Node): number {
  if (node.kind === "scalar") return node.end;
  const inner = node.kind === "list" ? node.items : [...node.entries.values()].map((entry) => entry.node);
  return inner.reduce((end, each) => Math.max(end, endOf(each)), node.at);
}

function oneByOne(text: string, changes: readonly PlanChange[]): PlanEdit {
  const done: PlanEdit = { text, problems: [] };
  for (const { path, value } of changes) {
    const { text: next, problems } =
      value === undefined ? removeFromPlan(done.text, path) : setInPlan(done.text, path, value);
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
