import type { Node } from "../source/node.ts";
import { readSource } from "../source/readSource.ts";
import { type Json, toJson } from "../source/toJson.ts";
import { type EditPath, type PlanEdit, setInPlan } from "./editPlan.ts";
import { exactPath, NoSuchPlace } from "./model.ts";

/**
 * Lets an item of a list and the one behind it change places, or moves it further; those it passes move up. Their own
 * lines move, remarks inside them too; what stands between them stays where it is.
 *
 * @param at  Place of the item.
 * @param to  Its place afterwards; by default one further on.
 */
export function swapInPlan(text: string, listPath: EditPath, at: number, to = at + 1): PlanEdit {
  const { root, faults } = readSource(text);
  const list = root === undefined || faults.length > 0 ? undefined : nodeAt(root, listPath);
  if (root === undefined || list?.kind !== "list") return setInPlan(text, [...listPath, at + 1], null);
  const count = list.items.length;
  if (at < 0 || to < 0 || at >= count || to >= count)
    return setInPlan(text, [...listPath, Math.max(at, to) + 1], null);
  const from = Math.min(at, to);
  const passed = list.items.slice(from, Math.max(at, to) + 1);
  const flow = text[list.at] === "[";
  const spans = passed.map((item) => span(text, item, flow));
  const order = moved(
    spans.map((_, place) => place),
    at - from,
    to - from,
  );
  let turned = text.slice(0, spans[0]?.from);
  for (const [place, own] of spans.entries()) {
    const put = spans[order[place] ?? place] ?? own;
    turned += text.slice(put.from, put.to) + text.slice(own.to, spans[place + 1]?.from);
  }
  const apart = spans.every((own, place) => own.to <= (spans[place + 1]?.from ?? text.length));
  if (apart && says(turned, root, listPath, at, to)) return { text: turned, problems: [] };
  // Written in an unusual way: all that change places are written anew.
  let edit: PlanEdit = { text, problems: [] };
  for (const [place, own] of order.entries()) {
    const item = passed[own];
    if (item === undefined || own === place) continue;
    const next = setInPlan(edit.text, [...listPath, from + place], toJson(item));
    if (next.problems.length > 0) return next;
    edit = next;
  }
  return edit;
}

/** The list with one of its items at another place. */
function moved<T>(list: readonly T[], at: number, to: number): T[] {
  const rest = list.filter((_, place) => place !== at);
  return [...rest.slice(0, to), list[at] as T, ...rest.slice(to)]; // `at` is in the list
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

function says(text: string, before: Node, listPath: EditPath, at: number, to: number): boolean {
  const { root, faults } = readSource(text);
  if (root === undefined || faults.length > 0) return false;
  const meant = toJson(before);
  const list = valueAt(meant, exactPath(meant, listPath));
  if (!Array.isArray(list)) return false;
  list.splice(0, list.length, ...moved(list, at, to));
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
