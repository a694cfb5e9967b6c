import type { Node } from "../source/node.ts";
import { readSource } from "../source/readSource.ts";
import { type Json, toJson } from "../source/toJson.ts";
import { type EditPath, type PlanEdit, setInPlan } from "./editPlan.ts";
import { exactPath, NoSuchPlace } from "./model.ts";

/**
 * Lets an item of a list and the one behind it change places. Their own lines move, remarks inside them too; what
 * stands between them stays where it is.
 *
 * @param at  Place of the first of the two.
 */
export function swapInPlan(text: string, listPath: EditPath, at: number): PlanEdit {
  const { root, faults } = readSource(text);
  const list = root === undefined || faults.length > 0 ? undefined : nodeAt(root, listPath);
  if (root === undefined || list?.kind !== "list") return setInPlan(text, [...listPath, at + 1], null);
  const [one, other] = [list.items[at], list.items[at + 1]];
  if (one === undefined || other === undefined) return setInPlan(text, [...listPath, at + 2], null);
  const [first, second] = [toJson(one), toJson(other)];
  const flow = text[list.at] === "[";
  const [a, b] = [span(text, one, flow), span(text, other, flow)];
  const swapped =
    text.slice(0, a.from) +
    text.slice(b.from, b.to) +
    text.slice(a.to, b.from) +
    text.slice(a.from, a.to) +
    text.slice(b.to);
  if (a.to <= b.from && says(swapped, root, listPath, at)) return { text: swapped, problems: [] };
  // Written in an unusual way: both are written anew.
  const once = setInPlan(text, [...listPath, at], second);
  return once.problems.length > 0 ? once : setInPlan(once.text, [...listPath, at + 1], first);
}

function nodeAt(root: Node, path: EditPath): Node | undefined {
  let node: Node | undefined = root;
  try {
    for (const step of exactPath(toJson(root), path)) {
      if (node?.kind === "map") node = node.entries.get(String(step))?.node;
      else if (node?.kind === "list") node = node.items[Number(step)];
    }
  } catch (error) {
    if (error instanceof NoSuchPlace) return undefined;
    throw error;
  }
  return node;
}

/** The item itself; its last line to the end in a list of lines, with a remark behind it. */
function span(text: string, item: Node, flow: boolean): { from: number; to: number } {
  let to = endOf(text, item);
  if (!flow && text[to - 1] !== "\n") {
    const newline = text.indexOf("\n", to);
    to = newline < 0 ? text.length : newline;
    if (text[to - 1] === "\r") to--;
  } else if (!flow) to--;
  return { from: item.at, to };
}

function endOf(text: string, node: Node): number {
  if (node.kind === "scalar" || text[node.at] === "{" || text[node.at] === "[") return node.end;
  const inner = node.kind === "list" ? node.items : [...node.entries.values()].map((entry) => entry.node);
  return inner.reduce((end, each) => Math.max(end, endOf(text, each)), node.at);
}

function says(text: string, before: Node, listPath: EditPath, at: number): boolean {
  const { root, faults } = readSource(text);
  if (root === undefined || faults.length > 0) return false;
  const meant = toJson(before);
  const list = valueAt(meant, exactPath(meant, listPath));
  if (!Array.isArray(list)) return false;
  list.splice(at, 2, list[at + 1] as Json, list[at] as Json); // both were found
  return JSON.stringify(toJson(root)) === JSON.stringify(meant);
}

function valueAt(document: Json, path: EditPath): Json | undefined {
  let value: Json | undefined = document;
  for (const step of path) {
    if (Array.isArray(value)) value = value[Number(step)];
    else if (typeof value === "object" && value !== null) value = value[String(step)];
  }
  return value;
}
