import { plainName } from "../../words/plainName.ts";
import type { Block, Line, SectionKey, Span } from "./types.ts";

/** A paragraph; texts and lines are put one after the other. */
export function text(...parts: readonly (Span | Line | undefined)[]): Block {
  return { kind: "text", line: joined(parts) };
}

/** A paragraph that comes second. */
export function quiet(...parts: readonly (Span | Line | undefined)[]): Block {
  return { kind: "text", line: joined(parts), quiet: true };
}

export function strong(text: string, at?: SectionKey): Span {
  return at === undefined ? { strong: text } : { strong: text, at };
}

function joined(parts: readonly (Span | Line | undefined)[]): Line {
  return parts.flatMap((part) => (part === undefined ? [] : Array.isArray(part) ? part : [part as Span]));
}

/** A name of the plan on one line, cut to about `most` characters: a few more are no reason to leave a word out. */
export function named(name: string, most: number): string {
  return plainName(name, most, Math.min(12, Math.ceil(most / 6)));
}

/** A text of the plan on one line, cut as `clause` cuts it. Ends as a sentence does. */
export function sentence(said: string, most: number): string {
  return ended(clause(said, most));
}

/**
 * A text of the plan on one line, cut to about `most` characters: after a whole sentence or clause where one ends in the
 * second half of the room, and then with a space before the "…"; else after a word.
 *
 * @param over  So many characters more are no reason to cut.
 */
export function clause(said: string, most: number, over = Math.min(24, Math.ceil(most / 4))): string {
  const whole = plainName(said, 2000);
  const room = most + over;
  if (whole.length <= room) return whole;
  const head = whole.slice(0, room + 1);
  for (const mark of [/[.!?;:](?=\s)/g, /,(?=\s)/g]) {
    const end = [...head.matchAll(mark)].map(({ index }) => index + 1).findLast((at) => at >= most / 2);
    // What is kept apart from the letters round it must keep both of its marks.
    if (end !== undefined && !head.startsWith("\u2068"))
      return `${head.slice(0, end).replace(/[,;:]$/, "")} …`;
  }
  return named(said, most);
}

function ended(line: string): string {
  return /[.!?…:;"”)]$/.test(line) ? line : `${line}.`;
}

/** The first `most` of a list, each told, and how many more there are. */
export function first<T>(list: readonly T[], most: number, tell: (item: T) => Line, what = "more"): Line[] {
  const told = list.slice(0, most).map(tell);
  const left = list.length - told.length;
  return left > 0 ? [...told, [`and ${left} ${what}`]] : told;
}

/** "A; B; and 2 more." */
export function inLine(list: readonly string[], most: number, size: number): string {
  const told = list.slice(0, most).map((each) => clause(each, size).replace(/[.;]$/, ""));
  const left = list.length - told.length;
  return ended([...told, ...(left > 0 ? [`and ${left} more`] : [])].join("; "));
}
