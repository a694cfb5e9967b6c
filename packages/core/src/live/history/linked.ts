import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";
import type { HistoryEntry, HistoryFacts } from "./types.ts";

/** SHA-256, in hex, of the RFC 8785 JSON of a line of a history, its own `hash` left out. */
export function hashOfLine(line: object): string {
  const { hash: _, ...rest } = line as { hash?: unknown };
  const text = canonicalize(rest);
  if (text === undefined) throw new Error("not a JSON value"); // only for functions, symbols and undefined
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/**
 * Links what is to be written to the line before it.
 *
 * @param last  The last entry of the history; absent for the first.
 */
export function linked(facts: HistoryFacts, last?: Pick<HistoryEntry, "hash">): HistoryEntry {
  const line = { ...facts, previous: last?.hash ?? null };
  return { ...line, hash: hashOfLine(line) };
}

/** A line of the file, its line break included. One line: JSON escapes line breaks within texts. */
export function lineOf(entry: HistoryEntry): string {
  return `${JSON.stringify(entry)}\n`;
}
