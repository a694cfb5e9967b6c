import { isCollection, isNode, parseDocument, visit, YAMLSeq, type Node as YamlNode } from "yaml";
import { Reading } from "../definition/reading.ts";
import type { Problem } from "../problem.ts";
import { fromData } from "../source/fromData.ts";
import type { Fault, SourceTree } from "../source/node.ts";
import { readSource } from "../source/readSource.ts";
import { type Json, toJson } from "../source/toJson.ts";
import { type Edit, type EditPath, edited, exactPath, isObject, NoSuchPlace } from "./model.ts";
import { splice } from "./splice.ts";

export type { EditPath } from "./model.ts";

/** A plan's text after an edit, or why it could not be made. */
export interface PlanEdit {
  /** The text after the edit; the text as it came where it could not be made. */
  text: string;
  /** Why the edit could not be made; empty where it was. The plan itself is not checked: read it again. */
  problems: Problem[];
}

/**
 * Puts a value into the text of a plan and leaves every other character alone: comments, order and
 * spacing stay, JSON stays JSON. Objects on the way that do not exist are made.
 *
 * @param path   Keys and positions; in a list also the `id` of an item: `["tasks", "survey", "duration"]`.
 * @param value  A JSON value; estimates are written compactly, `[5, 7, 14]`.
 */
export function setInPlan(text: string, path: EditPath, value: unknown): PlanEdit {
  return withValue(text, value, (json) => ({ kind: "set", path, value: json }));
}

/** Takes a key or an item out of the text of a plan, its own lines with it. */
export function removeFromPlan(text: string, path: EditPath): PlanEdit {
  return change(text, { kind: "remove", path });
}

/**
 * Adds an item to a list, which is made where it does not exist; a single item becomes a list.
 *
 * @param before  Place of the item that is to follow it; left out: it goes to the end.
 */
export function addToPlan(text: string, listPath: EditPath, value: unknown, before?: number): PlanEdit {
  const at = before === undefined ? {} : { before };
  return withValue(text, value, (json) => ({ kind: "add", path: listPath, value: json, ...at }));
}

function withValue(text: string, value: unknown, edit: (json: Json) => Edit): PlanEdit {
  const { root, faults } = fromData(value);
  if (root === undefined || faults.length > 0) return refuse(text, { faults });
  if (holdsStrangeNumber(toJson(root))) {
    const rule = "A plan holds finite numbers only.";
    return refuse(text, {
      faults: [{ code: "not-json", at: -1, received: "", rule, remedy: "Pass a finite number." }],
    });
  }
  return change(text, edit(toJson(root)));
}

function holdsStrangeNumber(value: Json): boolean {
  if (typeof value === "number") return !Number.isFinite(value);
  if (Array.isArray(value)) return value.some(holdsStrangeNumber);
  return isObject(value) && Object.values(value).some(holdsStrangeNumber);
}

function change(text: string, asked: Edit): PlanEdit {
  const tree = readSource(text);
  const { root } = tree;
  if (root === undefined || tree.faults.length > 0) return refuse(text, tree);
  const document = toJson(root);
  let edit: Edit;
  let meant: string;
  try {
    edit = { ...asked, path: exactPath(document, asked.path) };
    // An item of a list may not become a list itself; only the value of a key may.
    if (edit.kind === "add" && typeof edit.path[edit.path.length - 1] === "number")
      throw new NoSuchPlace(asked.path);
    meant = JSON.stringify(edited(document, edit));
  } catch (error) {
    if (!(error instanceof NoSuchPlace)) throw error;
    const rule = "The plan has no such place.";
    const fault = {
      code: "no-such-place",
      at: -1,
      received: error.at.join("."),
      rule,
      remedy: "Name a key or item it has.",
    };
    return refuse(text, { faults: [fault] });
  }
  if (JSON.stringify(document) === meant && edit.kind === "set") return { text, problems: [] };

  const json = /^\uFEFF?\s*\{/.test(text) && isJson(text);
  for (const attempt of [splice, rewrite]) {
    const result = attempted(() => attempt(text, root, edit, json));
    if (result !== undefined && says(result, meant) && (!json || isJson(result)))
      return { text: result, problems: [] };
  }
  const rule = "This place cannot be changed on its own; it is shared, or written in an unusual way.";
  return refuse(text, {
    faults: [{ code: "cannot-edit", at: -1, received: "", rule, remedy: "Change it in the text." }],
  });
}

/** The YAML library throws where a path leads through an alias. */
function attempted(attempt: () => string | undefined): string | undefined {
  try {
    return attempt();
  } catch {
    return undefined;
  }
}

function refuse(text: string, tree: SourceTree): PlanEdit {
  const reading = new Reading({ ...tree, text });
  for (const fault of tree.faults) reading.reportFault(fault satisfies Fault);
  return { text, problems: reading.problems };
}

/** Whether a text reads without fault as the document that was meant, order of keys included. */
function says(text: string, meant: string): boolean {
  const { root, faults } = readSource(text);
  return root !== undefined && faults.length === 0 && JSON.stringify(toJson(root)) === meant;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text.replace(/^\uFEFF/, ""));
    return true;
  } catch {
    return false;
  }
}

/** The slow way, for what has no simple splice: the document is written anew, comments and order kept. */
function rewrite(text: string, _root: unknown, edit: Edit, json: boolean): string | undefined {
  if (json)
    return `${JSON.stringify(edited(JSON.parse(text.replace(/^\uFEFF/, "")) as Json, edit), null, 2)}\n`;
  const document = parseDocument(text, { version: "1.2", schema: "core" });
  const path = [...edit.path];
  const value = edit.kind === "remove" ? undefined : compact(document.createNode(edit.value));
  if (edit.kind === "remove") document.deleteIn(path);
  else if (edit.kind === "set") document.setIn(path, value);
  else {
    const list: unknown = document.getIn(path, true);
    if (list instanceof YAMLSeq) list.items.splice(edit.before ?? list.items.length, 0, value);
    else if (list === undefined) document.setIn(path, document.createNode([edit.value]));
    else {
      const sequence = new YAMLSeq();
      sequence.items.push(list);
      sequence.items.splice(edit.before ?? 1, 0, value);
      document.setIn(path, sequence);
    }
  }
  return document.toString({ lineWidth: 0 });
}

function compact(node: YamlNode): YamlNode {
  if (!isCollection(node)) return node;
  visit(node, {
    Collection: (_key, each) => {
      if (isNode(each) && JSON.stringify(each.toJSON()).length <= 90) each.flow = true;
    },
  });
  return node;
}
