import { appendFileSync, closeSync, fstatSync, fsyncSync, ftruncateSync, openSync, writeSync } from "node:fs";
import { type HistoryEntry, type HistoryFacts, lineOf, linked } from "@leeway/core";
import { writeWhole } from "../files/writeWhole.ts";
import type { BesidePlan } from "./besidePlan.ts";
import { keptHistory } from "./keptHistory.ts";
import { withLock } from "./withLock.ts";

export interface Appended {
  entries: HistoryEntry[];
  /** A torn line stood at the end; it is in the file `torn` now. */
  tornLine?: number;
}

/**
 * Adds forecasts to the history of a plan, each linked to the line before it.
 *
 * Two processes take turns (a lock), and each reads the file anew before it writes, so that no link is lost. A line goes
 * out in one write and is forced to the disk; when even that is cut short, the next reading tells of a torn line. Such a
 * line is moved to a file of its own before anything is added behind it.
 */
export function appendToHistory(
  { history, torn }: BesidePlan,
  facts: (last: HistoryEntry | undefined) => readonly HistoryFacts[],
): Promise<Appended> {
  return withLock(history, () => {
    const kept = keptHistory(history);
    if (kept.torn !== undefined) {
      // First kept aside, then cut off: whatever happens between, it is somewhere.
      appendFileSync(torn, `${kept.torn.text}\n`);
      writeWhole(history, kept.text.slice(0, kept.text.length - kept.torn.text.length), true);
    }
    const entries: HistoryEntry[] = [];
    let last = kept.entries.at(-1);
    for (const each of facts(last)) {
      last = linked(each, last);
      entries.push(last);
    }
    append(history, (kept.open ? "\n" : "") + entries.map(lineOf).join(""));
    return { entries, ...(kept.torn === undefined ? {} : { tornLine: kept.torn.line }) };
  });
}

function append(path: string, text: string): void {
  if (text === "") return;
  const file = openSync(path, "a");
  const { size } = fstatSync(file);
  try {
    const bytes = Buffer.from(text, "utf8");
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } catch (error) {
    // A full disk takes the beginning of a line: what stood there before is what stays.
    ftruncateSync(file, size);
    throw error;
  } finally {
    closeSync(file);
  }
}
