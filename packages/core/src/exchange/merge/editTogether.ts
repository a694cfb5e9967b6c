import { addToPlan, removeFromPlan, setInPlan } from "../../plan/edit/editPlan.ts";
import { type Edit, edited, exactPath } from "../../plan/edit/model.ts";
import { splice } from "../../plan/edit/splice.ts";
import type { Problem } from "../../plan/problem.ts";
import { readSource } from "../../plan/source/readSource.ts";
import { type Json, toJson } from "../../plan/source/toJson.ts";

interface Patch {
  from: number;
  to: number;
  put: string;
  order: number;
}

/**
 * Many edits of one text. Each is a small cut in the text as it came, all are made in one go, and the outcome is read
 * again; where it does not say what was meant, the edits are made one by one, which is slower.
 *
 * @param edits  Paths are of the document as it came. Values are put before items are taken out, and items are added
 *               last.
 */
export function editTogether(text: string, edits: readonly Edit[]): { text: string; problems: Problem[] } {
  if (edits.length === 0) return { text, problems: [] };
  const rank = { set: 0, remove: 1, add: 2 };
  const inOrder = edits
    .map((edit, at) => ({ edit, at }))
    .sort((a, b) => {
      const kinds = rank[a.edit.kind] - rank[b.edit.kind];
      if (kinds !== 0) return kinds;
      return a.edit.kind === "remove" ? behindFirst(a.edit, b.edit) : a.at - b.at;
    })
    .map(({ edit }) => edit);
  return inOneGo(text, inOrder) ?? oneByOne(text, inOrder);
}

/** From the end, so that no place moves before it is reached. */
function behindFirst(a: Edit, b: Edit): number {
  for (const [depth, step] of a.path.entries()) {
    const other = b.path[depth];
    if (step === other) continue;
    if (typeof step === "number" && typeof other === "number") return other - step;
    return String(step) < String(other) ? -1 : 1;
  }
  return 0;
}

function inOneGo(text: string, edits: readonly Edit[]): { text: string; problems: Problem[] } | undefined {
  const { root, faults } = readSource(text);
  if (root === undefined || faults.length > 0) return undefined;
  const json = /^\uFEFF?\s*\{/.test(text) && isJson(text);
  const document = toJson(root);
  let meant: Json = document;
  const patches: Patch[] = [];
  try {
    for (const [order, asked] of edits.entries()) {
      const edit = { ...asked, path: exactPath(document, asked.path) };
      meant = edited(meant, { ...asked, path: exactPath(meant, asked.path) });
      const after = splice(text, root, edit, json);
      if (after === undefined) return undefined;
      patches.push({ ...difference(text, after), order });
    }
  } catch {
    return undefined; // a place that the edits before it make: one by one knows it
  }
  patches.sort((a, b) => a.from - b.from || a.order - b.order);
  let result = "";
  let at = 0;
  for (const { from, to, put } of patches) {
    if (from < at) return undefined;
    result += text.slice(at, from) + put;
    at = to;
  }
  result += text.slice(at);
  const again = readSource(result);
  const says = again.root !== undefined && again.faults.length === 0 && JSON.stringify(toJson(again.root));
  return says === JSON.stringify(meant) && (!json || isJson(result))
    ? { text: result, problems: [] }
    : undefined;
}

function oneByOne(before: string, edits: readonly Edit[]): { text: string; problems: Problem[] } {
  let text = before;
  for (const edit of edits) {
    const made =
      edit.kind === "remove"
        ? removeFromPlan(text, edit.path)
        : edit.kind === "set"
          ? setInPlan(text, edit.path, edit.value)
          : addToPlan(text, edit.path, edit.value);
    if (made.problems.length > 0) return { text: before, problems: made.problems };
    text = made.text;
  }
  return { text, problems: [] };
}

/** Compared in pieces first: a text of a thousand tasks is compared thousands of times. */
const PIECE = 1024;

function difference(before: string, after: string): Omit<Patch, "order"> {
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from + PIECE <= most && before.slice(from, from + PIECE) === after.slice(from, from + PIECE))
    from += PIECE;
  while (from < most && before[from] === after[from]) from++;
  let same = 0;
  const tail = (text: string, back: number) => text.slice(text.length - back - PIECE, text.length - back);
  while (same + PIECE <= most - from && tail(before, same) === tail(after, same)) same += PIECE;
  while (same < most - from && before[before.length - 1 - same] === after[after.length - 1 - same]) same++;
  return { from, to: before.length - same, put: after.slice(from, after.length - same) };
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text.replace(/^\uFEFF/, ""));
    return true;
  } catch {
    return false;
  }
}
