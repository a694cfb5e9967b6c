import { isEntry } from "./isEntry.ts";
import { hashOfLine } from "./linked.ts";
import type { Break, ForecastHistory, HistoryEntry } from "./types.ts";

/**
 * Reads a history, one JSON object a line (line feeds; carriage returns before them are let pass), and follows its
 * links. Nothing is thrown and no complete line is lost: what does not read or does not hold together is a break with
 * its line, and what stands behind the last line break is the torn beginning of a line.
 *
 * What links can show: a line that was changed, taken out, put in or moved. What they cannot: that lines at the end are
 * missing, or that somebody wrote the whole file anew. Whoever needs that keeps the last `hash` elsewhere.
 */
export function readHistory(text: string): ForecastHistory {
  const history: ForecastHistory = { entries: [], lines: [], breaks: [], open: false };
  const rows = text.replace(/^\uFEFF/, "").split("\n");
  rows.forEach((row, index) => {
    const line = index + 1;
    const last = index === rows.length - 1;
    if (row.trim() === "") return;
    const entry = entryIn(row);
    if (entry === undefined) {
      if (last) history.torn = { line, text: row };
      else history.breaks.push({ line, what: "unreadable" });
      return;
    }
    if (last) history.open = true;
    history.breaks.push(...breaksAt(entry, line, history.entries.at(-1), history.entries.length === 0));
    history.entries.push(entry);
    history.lines.push(line);
  });
  return history;
}

function breaksAt(
  entry: HistoryEntry,
  line: number,
  before: HistoryEntry | undefined,
  first: boolean,
): Break[] {
  const breaks: Break[] = [];
  if (!isWhole(entry)) breaks.push({ line, what: "changed" });
  if (entry.previous !== (first ? null : before?.hash)) breaks.push({ line, what: "not-linked" });
  return breaks;
}

function entryIn(row: string): HistoryEntry | undefined {
  try {
    const value: unknown = JSON.parse(row);
    return isEntry(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** A line with a number beyond doubles, or nested without end, has no RFC 8785 JSON: nothing of ours wrote it. */
function isWhole(entry: HistoryEntry): boolean {
  try {
    return hashOfLine(entry) === entry.hash;
  } catch {
    return false;
  }
}
