import { data, listAt } from "./removeTask.ts";

export interface Suggestion {
  id: string;
  name: string;
}

/** As many at once as are taken in at a glance. */
const most = 8;

/** The part of a text, between commas or semicolons, that the caret is in. */
export function partAt(text: string, caret: number): { from: number; to: number; part: string } {
  const before = Math.max(text.lastIndexOf(",", caret - 1), text.lastIndexOf(";", caret - 1)) + 1;
  const after = /[,;]/.exec(text.slice(caret));
  const end = after === null ? text.length : caret + after.index;
  const from = before + (/^\s*/.exec(text.slice(before, end))?.[0].length ?? 0);
  return { from, to: end, part: text.slice(from, end).trim() };
}

/** What a part of a name, or of an id, may stand for: names that begin with it first. */
export function suggestions(part: string, options: readonly Suggestion[]): Suggestion[] {
  const small = part.toLowerCase();
  if (small === "") return [];
  const rank = ({ id, name }: Suggestion): number => {
    const words = name.toLowerCase();
    if (words.startsWith(small) || id.startsWith(small)) return 0;
    if (words.includes(` ${small}`)) return 1;
    return words.includes(small) ? 2 : 3;
  };
  return options
    .map((option) => ({ option, at: rank(option) }))
    .filter(({ at }) => at < 3)
    .sort((a, b) => a.at - b.at)
    .slice(0, most)
    .map(({ option }) => option);
}

/** The text with one of its parts put in place of what was typed, and where the caret is then. */
export function withPart(
  text: string,
  { from, to }: { from: number; to: number },
  value: string,
): { text: string; caret: number } {
  return { text: text.slice(0, from) + value + text.slice(to), caret: from + value.length };
}

/** What can be named in a document, as plain data. */
export function optionsOf(stated: unknown, kind: string): Suggestion[] {
  const lists = kind === "who" ? ["people", "stakeholders"] : [kind];
  return lists.flatMap((list) =>
    listAt(stated, list).map((item) => ({ id: String(data(item).id), name: String(data(item).name) })),
  );
}
