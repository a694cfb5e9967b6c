import { Document, isCollection, stringify } from "yaml";
import type { Json } from "../source/toJson.ts";
import { isObject } from "./model.ts";

/** Widest collection written on one line. */
const ONE_LINE = 90;
const TO_STRING = { lineWidth: 0 } as const;
/** Text with line breaks stays on one line, with its breaks escaped. */
const ONE_LINE_TEXT = { ...TO_STRING, doubleQuotedMinMultiLineLength: 1e9, blockQuote: false } as const;

/** A value on one line, as it stands inside brackets: `[5, 7, 14]`, `{ low: 5, high: 9 }`. */
export function renderFlow(value: Json, json: boolean): string {
  if (Array.isArray(value)) return `[${value.map((item) => renderFlow(item, json)).join(", ")}]`;
  if (!isObject(value)) return json ? JSON.stringify(value) : renderScalar(value);
  const entries = Object.entries(value).map(
    ([key, item]) => `${renderFlow(key, json)}: ${renderFlow(item, json)}`,
  );
  return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}

/** Quoted where brackets, commas or another type would otherwise claim it. */
function renderScalar(value: string | number | boolean | null): string {
  if (typeof value !== "string") return stringify(value, { version: "1.2" }).trim();
  if (/^[A-Za-z][\w-]*$/.test(value) && !/^(?:true|false|null)$/i.test(value)) return value;
  const list = new Document([value], { version: "1.2" });
  if (isCollection(list.contents)) list.contents.flow = true;
  return list.toString(ONE_LINE_TEXT).trim().slice(1, -1).trim();
}

/**
 * A value as lines of block style, without a first indentation; what fits on a line stays in brackets.
 */
export function renderBlock(value: Json): string[] {
  if (Array.isArray(value) && value.length > 0) {
    return value.flatMap((item) => {
      const lines = isShort(item) ? [renderFlow(item, false)] : renderBlock(item);
      return lines.map((line, index) => indented(index === 0 ? "- " : "  ", line));
    });
  }
  if (isObject(value) && Object.keys(value).length > 0) {
    return Object.entries(value).flatMap(([key, item]) => renderPair(key, item));
  }
  return [renderFlow(value, false)];
}

/** A key and its value as lines of block style. */
export function renderPair(key: string, value: Json): string[] {
  if (typeof value === "string" && value.includes("\n")) {
    return new Document({ [key]: value }, { version: "1.2" })
      .toString(TO_STRING)
      .replace(/\n$/, "")
      .split("\n");
  }
  const name = renderFlow(key, false);
  if (isShort(value) && !(Array.isArray(value) && value.some(isObject))) {
    return [`${name}: ${renderFlow(value, false)}`];
  }
  return [`${name}:`, ...renderBlock(value).map((line) => indented("  ", line))];
}

/** A line further in; empty lines stay empty. */
export function indented(indent: string, line: string): string {
  return line === "" ? "" : indent + line;
}

/** Whether a value is better written in brackets on one line. */
export function isShort(value: Json): boolean {
  return typeof value !== "object" || value === null || JSON.stringify(value).length <= ONE_LINE;
}
