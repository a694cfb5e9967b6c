import type { Entry, MapNode, Node } from "../source/node.ts";
import type { Json } from "../source/toJson.ts";
import { type Edit, edited, isObject } from "./model.ts";
import { indented, isShort, renderBlock, renderFlow, renderPair } from "./render.ts";

interface Site {
  text: string;
  json: boolean;
}

/**
 * Makes an edit by replacing only the characters it concerns, so that comments, order and spacing of all
 * other text stay. `undefined` where that has no simple way; the caller compares the outcome with what was
 * meant, so that a wrong guess here is never written.
 */
export function splice(text: string, root: Node, edit: Edit, json: boolean): string | undefined {
  const site = { text, json };
  let node = root;
  /** The key of a block map whose value `node` is. */
  let owner: Entry | undefined;
  for (const [depth, step] of edit.path.entries()) {
    const rest = edit.path.slice(depth + 1);
    const last = rest.length === 0;
    if (node.kind === "map" && typeof step === "string") {
      const entry = node.entries.get(step);
      if (entry === undefined) {
        if (edit.kind === "remove") return undefined;
        return insertKey(site, node, step, edited(undefined, { ...edit, path: rest }));
      }
      if (last && edit.kind === "remove") {
        if (node.entries.size === 1 && owner !== undefined) return replaceEntry(site, owner, {});
        return removeKey(site, node, entry);
      }
      if (last && edit.kind === "set" && !isFlow(site, node) && !fitsInPlace(site, entry.node, edit.value)) {
        return replaceEntry(site, entry, edit.value);
      }
      owner = isFlow(site, node) ? undefined : entry;
      node = entry.node;
    } else if (node.kind === "list" && typeof step === "number") {
      const item = node.items[step];
      if (item === undefined) {
        if (edit.kind === "remove") return undefined;
        return append(site, node, edited(undefined, { ...edit, path: rest }));
      }
      if (last && edit.kind === "remove") {
        if (node.items.length === 1 && owner !== undefined) return replaceEntry(site, owner, []);
        return removeItem(site, node, step);
      }
      if (last && edit.kind === "set" && !isFlow(site, node) && !isInline(site, item)) {
        return replaceItem(site, item, edit.value);
      }
      owner = undefined;
      node = item;
    } else return undefined;
  }
  if (edit.kind === "set") return replace(site, node, edit.value);
  if (edit.kind !== "add") return undefined;
  if (node.kind === "list") return insertItem(site, node, edit.value, edit.before);
  return edit.before === 0 ? undefined : appendToSingle(site, node, edit.value);
}

function cut(text: string, from: number, to: number, put: string): string {
  return text.slice(0, from) + put + text.slice(to);
}

function isFlow(site: Site, node: Node): boolean {
  return node.kind !== "scalar" && (site.text[node.at] === "{" || site.text[node.at] === "[");
}

/** Where the last character of a node's own text ends. */
function lastEnd(site: Site, node: Node): number {
  if (node.kind === "scalar" || isFlow(site, node)) return node.end;
  const children = node.kind === "list" ? node.items : [...node.entries.values()].map((entry) => entry.node);
  let end = node.at;
  for (const child of children) end = Math.max(end, lastEnd(site, child));
  return end;
}

function lineStart(text: string, at: number): number {
  return text.lastIndexOf("\n", at - 1) + 1;
}
/** After the newline of the line `at` ends on; a block scalar has already eaten its own. */
function nextLine(text: string, at: number): number {
  if (at > 0 && text[at - 1] === "\n") return at;
  const newline = text.indexOf("\n", at);
  return newline < 0 ? text.length : newline + 1;
}
function indentAt(text: string, at: number): string {
  return /^[ \t]*/.exec(text.slice(lineStart(text, at), at))?.[0] ?? "";
}
/** Spaces up to the column of `at`, whatever stands there. */
function columnOf(text: string, at: number): string {
  return " ".repeat(at - lineStart(text, at));
}

function replace(site: Site, node: Node, value: Json): string | undefined {
  const { text } = site;
  if (!isInline(site, node)) return undefined;
  const put = renderFlow(value, site.json);
  return cut(text, node.at, node.end, node.at === node.end ? ` ${put}` : put);
}

/** Whether a value stands on its line, or in brackets. */
function isInline(site: Site, node: Node): boolean {
  const first = site.text[node.at];
  return node.kind === "scalar" ? first !== "|" && first !== ">" : isFlow(site, node);
}

/** Whether a value takes the place of another without growing beyond its line. */
function fitsInPlace(site: Site, node: Node, value: Json): boolean {
  return isInline(site, node) && (site.json || (isShort(value) && !isLongText(value)));
}

function isLongText(value: Json): boolean {
  return typeof value === "string" && value.includes("\n");
}

/** Writes an item of a block list anew. */
function replaceItem(site: Site, item: Node, value: Json): string {
  const { text } = site;
  const end = lastEnd(site, item);
  const indent = columnOf(text, item.at);
  const lines = isShort(value) ? [renderFlow(value, false)] : renderBlock(value);
  const put = lines.map((line, index) => (index === 0 ? line : indented(indent, line))).join("\n");
  return cut(text, item.at, end, put + (text[end - 1] === "\n" ? "\n" : ""));
}

/** Writes a key of a block map anew, with all that hangs on it. */
function replaceEntry(site: Site, entry: Entry, value: Json): string {
  const { text } = site;
  let end = lastEnd(site, entry.node);
  // A remark behind the last line of a block belongs to it; one behind a value on the key's line stays.
  if (entry.node.kind !== "scalar" && !isFlow(site, entry.node) && text[end - 1] !== "\n") {
    end = nextLine(text, end);
    if (text[end - 1] === "\n") end--;
    if (text[end - 1] === "\r") end--;
  }
  const ate = end > 0 && text[end - 1] === "\n" ? "\n" : "";
  const indent = columnOf(text, entry.keyAt);
  const lines = pairLines(indent, entry.key, value).slice(indent.length);
  return cut(text, entry.keyAt, end, lines + ate);
}

/** Inserts whole lines after a block node. */
function insertLines(text: string, after: number, lines: string): string {
  const at = nextLine(text, after);
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const open = at > 0 && text[at - 1] !== "\n" ? newline : "";
  return cut(text, at, at, `${open}${lines.split("\n").join(newline)}${newline}`);
}

/** Adds to brackets, in the way the last item stands. */
function insertFlow(site: Site, last: Node, lastAt: number, put: string): string {
  const { text } = site;
  const indent = indentAt(text, lastAt);
  const ownLine = lineStart(text, lastAt) + indent.length === lastAt && lastAt > 0;
  return cut(text, last.end, last.end, ownLine ? `,\n${indent}${put}` : `, ${put}`);
}

function insertKey(site: Site, map: MapNode, key: string, value: Json): string | undefined {
  const { text, json } = site;
  const entries = [...map.entries.values()];
  const last = entries[entries.length - 1];
  if (isFlow(site, map)) {
    const pair = `${renderFlow(key, json)}: ${renderFlow(value, json)}`;
    if (last === undefined) return cut(text, map.at, map.end, `{ ${pair} }`);
    return insertFlow(site, last.node, last.keyAt, pair);
  }
  if (last === undefined) return undefined;
  const indent = columnOf(text, last.keyAt);
  return insertLines(text, lastEnd(site, map), pairLines(indent, key, value));
}

function pairLines(indent: string, key: string, value: Json): string {
  return renderPair(key, value)
    .map((line) => indented(indent, line))
    .join("\n");
}

/** Puts an item before another, or at the end. */
function insertItem(
  site: Site,
  list: Extract<Node, { kind: "list" }>,
  value: Json,
  before: number | undefined,
): string | undefined {
  if (before === undefined || before >= list.items.length) return append(site, list, value);
  // Behind the item ahead: what stands above the next one, a remark perhaps, belongs to that.
  if (before > 0) return append(site, list, value, list.items[before - 1]);
  const { text, json } = site;
  const [first] = list.items;
  if (first === undefined) return undefined;
  if (isFlow(site, list)) return cut(text, first.at, first.at, `${renderFlow(value, json)}, `);
  const dash = text.lastIndexOf("-", first.at - 1);
  const begin = lineStart(text, dash);
  if (text.slice(begin, dash).trim() !== "" || text.slice(dash + 1, first.at).trim() !== "") return undefined;
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  return cut(text, begin, begin, itemLines(site, first, dash, value).join(newline) + newline);
}

/** A new item of a block list as lines, in the way another one stands whose dash is given. */
function itemLines(site: Site, like: Node, dash: number, value: Json): string[] {
  const indent = columnOf(site.text, dash);
  const inline = !isObject(value) || isFlow(site, like) || like.kind === "scalar";
  const body = inline && isShort(value) ? [renderFlow(value, site.json)] : renderBlock(value);
  return body.map((line, index) => indented(`${indent}${index === 0 ? "- " : "  "}`, line));
}

/** @param last  The item behind which it goes; the last one unless said. */
function append(
  site: Site,
  list: Extract<Node, { kind: "list" }>,
  value: Json,
  last = list.items[list.items.length - 1],
): string | undefined {
  const { text, json } = site;
  if (isFlow(site, list)) {
    if (last === undefined) return appendToEmpty(site, list, value);
    return insertFlow(site, last, last.at, renderFlow(value, json));
  }
  if (last === undefined) return undefined;
  const dash = text.lastIndexOf("-", last.at - 1);
  if (text.slice(dash + 1, last.at).trim() !== "") return undefined;
  return insertLines(text, lastEnd(site, last), itemLines(site, last, dash, value).join("\n"));
}

/** `tasks: []` grows into lines where the list hangs on a key of a block map. */
function appendToEmpty(site: Site, list: Node, value: Json): string {
  const { text, json } = site;
  const rest = text.slice(lineStart(text, list.at), list.at);
  if (json || !/^[ \t]*[\w-]+:\s*$/.test(rest) || !isObject(value)) {
    return cut(text, list.at, list.end, `[${renderFlow(value, json)}]`);
  }
  const indent = `${indentAt(text, list.at)}  `;
  const block = renderBlock([value])
    .map((line) => indented(indent, line))
    .join("\n");
  const from = text.slice(0, list.at).trimEnd().length;
  return cut(text, from, list.end, `\n${block}`);
}

/** A single item standing in for a list becomes the list's first. */
function appendToSingle(site: Site, single: Node, value: Json): string | undefined {
  const { text, json } = site;
  if (fitsInPlace(site, single, value)) {
    // Plain text may hold a comma, which would split it between brackets.
    const old = single.kind === "scalar" ? renderFlow(single.value, json) : text.slice(single.at, single.end);
    return cut(text, single.at, single.end, `[${old}, ${renderFlow(value, json)}]`);
  }
  const begin = lineStart(text, single.at);
  const indent = text.slice(begin, single.at);
  if (json || single.kind !== "map" || isFlow(site, single) || indent.trim() !== "") return undefined;
  const end = nextLine(text, lastEnd(site, single));
  const [first = "", ...rest] = text
    .slice(begin, end)
    .replace(/\r?\n$/, "")
    .split(/\r?\n/);
  const old = [`${indent}- ${first.slice(indent.length)}`, ...rest.map((line) => indented("  ", line))];
  const more = renderBlock([value]).map((line) => indented(indent, line));
  return cut(text, begin, end, `${[...old, ...more].join("\n")}\n`);
}

function removeKey(site: Site, map: MapNode, entry: Entry): string | undefined {
  const { text } = site;
  const entries = [...map.entries.values()].sort((a, b) => a.keyAt - b.keyAt);
  const index = entries.indexOf(entry);
  const next = entries[index + 1];
  const before = entries[index - 1];
  if (map.repeated.length > 0) return undefined;
  if (isFlow(site, map)) {
    if (entries.length === 1) return cut(text, map.at, map.end, "{}");
    if (next !== undefined) return cut(text, entry.keyAt, next.keyAt, "");
    return before && cut(text, before.node.end, entry.node.end, "");
  }
  if (entries.length === 1) return undefined;
  const end = nextLine(text, lastEnd(site, entry.node));
  const begin = lineStart(text, entry.keyAt);
  if (text.slice(begin, entry.keyAt).trim() === "") return cut(text, begin, end, "");
  // The first key shares its line with the dash of its item: the next key moves up.
  return next && text.slice(end, next.keyAt).trim() === ""
    ? cut(text, entry.keyAt, next.keyAt, "")
    : undefined;
}

function removeItem(site: Site, list: Extract<Node, { kind: "list" }>, index: number): string | undefined {
  const { text } = site;
  const item = list.items[index];
  const next = list.items[index + 1];
  const before = list.items[index - 1];
  if (item === undefined) return undefined;
  if (isFlow(site, list)) {
    if (next !== undefined) return cut(text, item.at, next.at, "");
    return before ? cut(text, before.end, item.end, "") : cut(text, list.at, list.end, "[]");
  }
  if (list.items.length === 1) return undefined;
  const dash = text.lastIndexOf("-", item.at - 1);
  const begin = lineStart(text, dash);
  if (text.slice(begin, dash).trim() !== "" || text.slice(dash + 1, item.at).trim() !== "") return undefined;
  return cut(text, begin, nextLine(text, lastEnd(site, item)), "");
}
