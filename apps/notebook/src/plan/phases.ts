import type { Edit } from "./edit.ts";
import { data, listAt, place } from "./removeTask.ts";

const registers = ["risks", "assumptions"] as const;

/** Names of the phases: those that are declared, in their order, then those that tasks only name. */
export function phasesIn(stated: unknown): string[] {
  const declared = listAt(stated, "phases").map((phase) => String(data(phase).name));
  const named = listAt(stated, "tasks").flatMap((task) => {
    const { phase } = data(task);
    return typeof phase === "string" ? [phase] : [];
  });
  return [...new Set([...declared, ...named])];
}

/** A phase more. Where phases are declared every one has to be, so those that tasks only name are declared with it. */
export function newPhase(
  name: string,
  stated: unknown,
  more: Readonly<Record<string, unknown>> = {},
): { edits: Edit[] } | { words: string } {
  const own = name.trim();
  if (own === "") return { words: "A phase needs a name." };
  const all = phasesIn(stated);
  const like = all.find((phase) => phase.toLowerCase() === own.toLowerCase());
  if (like !== undefined) return { words: `There is a phase “${like}” already. Give this one another name.` };
  const declared = new Set(listAt(stated, "phases").map((phase) => data(phase).name));
  return {
    edits: [
      ...all.filter((phase) => !declared.has(phase)).map((phase) => ({ name: phase })),
      { name: own, ...more },
    ].map((value): Edit => ({ path: "phases", value, add: "last" })),
  };
}

/** Another name for a phase, wherever it is named; undefined: it is named so already. */
export function renamePhase(
  old: string,
  name: string,
  stated: unknown,
): { edits: Edit[] } | { words: string } {
  const own = name.trim();
  if (own === "") return { words: "A phase needs a name." };
  if (phasesIn(stated).some((phase) => phase === own && phase !== old))
    return { words: `There is a phase “${own}” already. Give this one another name.` };
  const edits: Edit[] = [];
  const put = (path: string, of: unknown, key: string): void => {
    if (data(of)[key] === old) edits.push({ path: `${path}.${key}`, value: own });
  };
  for (const [i, phase] of listAt(stated, "phases").entries()) put(place(stated, "phases", i), phase, "name");
  for (const [i, task] of listAt(stated, "tasks").entries()) put(place(stated, "tasks", i), task, "phase");
  for (const list of registers)
    for (const [i] of listAt(stated, list).entries()) {
      const impacts = `${place(stated, list, i)}.impacts`;
      for (const [k, impact] of listAt(stated, impacts).entries())
        put(place(stated, impacts, k), impact, "phase");
    }
  return { edits };
}

/** What keeps a phase in the plan, in words; undefined: nothing. */
export function phaseNeeded(name: string, stated: unknown): string | undefined {
  const tasks = listAt(stated, "tasks").filter((task) => data(task).phase === name);
  if (tasks.length > 0)
    return `${tasks.length === 1 ? "1 task belongs" : `${tasks.length} tasks belong`} to it. Move ${tasks.length === 1 ? "it" : "them"} to another phase first.`;
  const touched = registers
    .flatMap((list) => listAt(stated, list))
    .find((entry) => {
      const { impacts } = data(entry);
      return (Array.isArray(impacts) ? impacts : [impacts]).some((impact) => data(impact).phase === name);
    });
  if (touched === undefined) return undefined;
  return `“${data(touched).name ?? data(touched).statement}” touches all of it. Change that first.`;
}

/**
 * A task moved to another phase: behind the last task that belongs to it, so that they stand together. Undefined as the
 * name: to none.
 */
export function moveToPhase(
  at: number,
  phase: string | undefined,
  stated: unknown,
): { edits: Edit[]; at: number } {
  const tasks = listAt(stated, "tasks").map((task) => data(task).phase);
  const edits: Edit[] = [{ path: `tasks[${at}].phase`, value: phase }];
  const last = tasks.findLastIndex((own, i) => i !== at && own === phase);
  const to = last < 0 ? at : last < at ? last + 1 : last;
  if (to !== at) edits.push({ path: "tasks", value: undefined, swap: at, to });
  return { edits, at: to };
}
