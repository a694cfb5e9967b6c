import { readFileSync } from "node:fs";
import { type ForecastHistory, readHistory } from "@leeway/core";

/** A history and the text it was read from; nothing where there is no file yet. */
export interface Kept extends ForecastHistory {
  text: string;
}

/**
 * Reads a history file. Bytes that are no UTF-8 (a line torn within a letter) are read as such signs and never make a
 * complete line unreadable. Throws the file system's error for a file that is there and cannot be read.
 */
export function keptHistory(path: string): Kept {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT")
      return { ...readHistory(""), text: "" };
    throw error;
  }
  const text = new TextDecoder().decode(bytes);
  return { ...readHistory(text), text };
}
