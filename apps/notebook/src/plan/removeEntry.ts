import { data, leave, listAt, type Removal, unaccepted } from "./removeTask.ts";

/**
 * Takes a risk, an assumption or one of their responses out of the document. It has to stay while something exists only
 * as long as one of its responses is adopted.
 *
 * @param list  The list it stands in: `risks`, `assumptions[2].responses`.
 */
export function removeEntry(stated: unknown, list: string, at: number): Removal {
  const entry = data(listAt(stated, list)[at]);
  const name = String(entry.name ?? entry.statement ?? entry.action);
  const responses = new Set([entry, ...listOf(entry.responses)].map((one) => data(one).id));
  const needing = [
    ...listAt(stated, "tasks"),
    ...listAt(stated, "risks"),
    ...listAt(stated, "assumptions"),
  ].filter((one) => responses.has(data(one).onlyIf) && one !== entry);
  const [first] = needing;
  if (first !== undefined) {
    const what = String(data(first).name ?? data(first).statement);
    return {
      refused: `“${name}” stays: “${what}” exists only while its response is adopted. Remove that first.`,
    };
  }
  const triggers = listAt(stated, "returnTriggers").flatMap((one, i) =>
    data(one).signpost === entry.id ? [i] : [],
  );
  const words =
    triggers.length === 0 ? "" : " What brings the plan back when its signpost is seen goes with it.";
  return {
    edits: [
      ...leave(stated, "returnTriggers", triggers),
      ...unaccepted(stated, String(entry.id)),
      ...leave(stated, list, [at]),
    ],
    words: `Removed “${name}”.${words} Undo brings it back.`,
  };
}

function listOf(value: unknown): readonly unknown[] {
  return value === undefined ? [] : Array.isArray(value) ? value : [value];
}
