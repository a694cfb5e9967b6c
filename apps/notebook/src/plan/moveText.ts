import { PAGE_SECTIONS } from "@leeway/core";
import type { Edit } from "./edit.ts";
import { data, listAt, place } from "./removeTask.ts";

/**
 * The edits that move a free text one place up or down on the page: past its neighbour below the same section, or from
 * there to the section before or after. Undefined: it cannot go further.
 *
 * @returns  `at`: where it stands in the list afterwards.
 */
export function moveText(
  stated: unknown,
  at: number,
  by: -1 | 1,
): { edits: Edit[]; at: number; after: string } | undefined {
  const texts = listAt(stated, "texts").map((one) => String(data(one).after));
  const section = texts[at];
  if (section === undefined) return undefined;
  const same = texts.flatMap((after, k) => (after === section ? [k] : []));
  const beside = same[same.indexOf(at) + by];
  if (beside !== undefined) return { edits: steps(at, beside), at: beside, after: section };
  const sections: readonly string[] = PAGE_SECTIONS;
  const after = sections[sections.indexOf(section) + by];
  if (after === undefined) return undefined;
  // Among those that stand there already it comes last from below, and first from above.
  const there = texts.flatMap((one, k) => (one === after ? [k] : []));
  const last = there.at(-1);
  const [first] = there;
  let to = at;
  if (by < 0 && last !== undefined && last > at) to = last;
  if (by > 0 && first !== undefined && first < at) to = first;
  const edits = [{ path: `${place(stated, "texts", at)}.after`, value: after }, ...steps(at, to)];
  return { edits, at: to, after };
}

/** An item of the list changes places, step by step, until it stands where it is to. */
function steps(from: number, to: number): Edit[] {
  const edits: Edit[] = [];
  for (let k = from; k < to; k++) edits.push({ path: "texts", value: undefined, swap: k });
  for (let k = from; k > to; k--) edits.push({ path: "texts", value: undefined, swap: k - 1 });
  return edits;
}
