import { renderFlow } from "../../plan/edit/render.ts";
import type { Problem } from "../../plan/problem.ts";
import { readSource } from "../../plan/source/readSource.ts";
import { type Json, toJson } from "../../plan/source/toJson.ts";
import { numberIn } from "../csv/numberIn.ts";

/** How a value stands in a cell. `flag`: yes and no. `list`: ids with commas between them. */
export type CellKind = "text" | "number" | "flag" | "list" | "estimate";

/** Text a cell holds as it is; anything else is written as the plan writes it between brackets. */
const PLAIN_ITEM = /^[A-Za-z0-9_][^,[\]{}"'#\r\n]*$/;

/** The cell of a value as written in the document; nothing for a key that is absent. */
export function cellOf(value: Json | undefined, kind: CellKind): string | number {
  if (value === undefined) return "";
  if (typeof value === "number" && kind !== "text") return value;
  if (typeof value === "boolean" && kind === "flag") return value ? "yes" : "no";
  if (typeof value === "string") {
    if (kind === "text") return value === "" || /^[[{"]/.test(value) ? JSON.stringify(value) : value;
    if (kind !== "list" || isPlain(value)) return value;
  }
  if (kind === "list" && Array.isArray(value) && value.length > 0 && value.every(isPlain))
    return value.join(", ");
  return renderFlow(value, false);
}

function isPlain(value: Json): boolean {
  return typeof value === "string" && PLAIN_ITEM.test(value) && value === value.trim();
}

export type CellRead =
  | { value: Json | undefined; comma?: boolean }
  | Pick<Problem, "code" | "rule" | "remedy">;

/** The value a cell stands for; `undefined` for an empty one. What it means in a plan is for the plan to check. */
export function valueIn(cell: string, kind: CellKind, semicolons: boolean): CellRead {
  const text = cell.trim();
  if (text === "") return { value: undefined };
  if (/^[[{"]/.test(text)) return bracketed(text);
  if (kind === "text") return { value: cell };
  if (kind === "flag") {
    const lower = text.toLowerCase();
    if (["yes", "true"].includes(lower)) return { value: true };
    return { value: ["no", "false"].includes(lower) ? false : text };
  }
  if (kind === "list") {
    const items = text.split(semicolons ? /[,;]/ : ",").map((item) => item.trim());
    return { value: items.filter((item) => item !== "") };
  }
  const read = numberIn(text, semicolons);
  if ("value" in read) return read;
  return { code: "not-a-number", rule: "This must be a number.", remedy: read.remedy };
}

function bracketed(text: string): CellRead {
  const { root, faults } = readSource(text);
  if (root !== undefined && faults.length === 0) return { value: toJson(root) };
  return {
    code: "brackets",
    rule: "What stands in brackets or quotes is written as in a plan.",
    remedy: "Write e.g. [5, 7, 14] or { task: survey, lag: 3 }, and close what is open.",
  };
}

/** Whether two values say the same: a single item may stand for a list of one. */
export function sameValue(a: Json | undefined, b: Json | undefined, kind: CellKind): boolean {
  const whole = (value: Json | undefined) =>
    kind === "list" && value !== undefined && !Array.isArray(value) ? [value] : value;
  return JSON.stringify(sortedKeys(whole(a))) === JSON.stringify(sortedKeys(whole(b)));
}

function sortedKeys(value: Json | undefined): unknown {
  if (Array.isArray(value)) return value.map(sortedKeys);
  if (typeof value !== "object" || value === null) return value;
  return Object.entries(value)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, item]) => [key, sortedKeys(item)]);
}
