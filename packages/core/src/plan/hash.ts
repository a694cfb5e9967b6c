import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";
import type { Json } from "./source/toJson.ts";

type JsonObject = { [key: string]: Json };

const DECISIONS = ["approvals", "objections", "changes", "acceptedFindings"];
/** Talk: what people said, and who wrote it down. */
const TASK_TALK = ["opinions", "enteredBy"];
const QUALITY_PROGRESS = ["measured", "on"];
const LIST_PROGRESS = [
  ["tasks", ["started", "finished", "remaining", "spent"]],
  ["risks", ["status", "actual"]],
  ["assumptions", ["status", "actual", "tripped"]],
] as const;

/**
 * SHA-256, in hex, of a plan document as written: RFC 8785 JSON without approvals, objections, changes, accepted
 * findings, opinions and who entered what, defaults not filled in, every list of objects with `id` sorted by it (code
 * units) at every depth.
 * YAML and JSON of the same content, comments and key order aside, give the same hash.
 */
export function planHash(document: Json): string {
  return hash(sorted(withoutTalk(without(document, DECISIONS))));
}

/** The hash an approval is bound to: as `planHash`, with progress left out too. */
export function approvalHash(document: Json): string {
  return planHash(withoutProgress(document));
}

/** Both hashes; one calculation where the plan has no progress yet. */
export function planHashes(document: Json): { sha256: string; approvalSha256: string } {
  const sha256 = planHash(document);
  const bare = withoutProgress(document);
  return { sha256, approvalSha256: bare === document ? sha256 : planHash(bare) };
}

/** What people said before an estimate was settled is talk; what was settled counts. */
function withoutTalk(document: Json): Json {
  return at(document, "tasks", (tasks) => each(tasks, TASK_TALK));
}

/** The document itself where it holds no progress. */
function withoutProgress(document: Json): Json {
  let bare = without(document, ["statusDate"]);
  for (const [list, keys] of LIST_PROGRESS) bare = at(bare, list, (items) => each(items, keys));
  return at(bare, "purpose", (purpose) => at(purpose, "quality", (bars) => each(bars, QUALITY_PROGRESS)));
}

/** The value with what stands under a key changed; itself where that stays the same. */
function at(value: Json, key: string, change: (item: Json) => Json): Json {
  const item = isObject(value) ? value[key] : undefined;
  if (item === undefined) return value;
  const changed = change(item);
  return changed === item ? value : Object.assign(Object.create(null), value, { [key]: changed });
}

/** The items of a list, or a lone one, without these keys; itself where none has them. */
function each(list: Json, keys: readonly string[]): Json {
  if (!Array.isArray(list)) return without(list, keys);
  const items = list.map((item) => without(item, keys));
  return items.every((item, index) => item === list[index]) ? list : items;
}

/** SHA-256 of the RFC 8785 form. The document holds JSON values only, so canonicalize always answers. */
function hash(document: Json): string {
  const text = canonicalize(document);
  if (text === undefined) throw new Error("not a JSON value"); // only for functions, symbols and undefined
  return bytesToHex(sha256(utf8ToBytes(text)));
}

function isObject(value: Json): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function without(value: Json, keys: readonly string[]): Json {
  if (!isObject(value) || !keys.some((key) => Object.hasOwn(value, key))) return value;
  const result: JsonObject = Object.create(null);
  for (const [key, item] of Object.entries(value)) if (!keys.includes(key)) result[key] = item;
  return result;
}

/** The value with its lists of objects in order; itself, and any part of it, where that is how it stands. */
function sorted(value: Json): Json {
  if (Array.isArray(value)) {
    const items = value.map(sorted);
    const ids = items.map((item) => (isObject(item) && typeof item.id === "string" ? item.id : undefined));
    const stay = ids.includes(undefined) || ids.every((id = "", i) => i === 0 || (ids[i - 1] ?? "") <= id);
    if (stay) return items.every((item, i) => item === value[i]) ? value : items;
    const order = items.map((item, index) => ({ item, id: ids[index] ?? "" }));
    return order.sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)).map(({ item }) => item);
  }
  if (!isObject(value)) return value;
  let result = value;
  for (const [key, item] of Object.entries(value)) {
    const inside = sorted(item);
    if (inside === item) continue;
    if (result === value) result = Object.assign(Object.create(null), value);
    result[key] = inside;
  }
  return result;
}
