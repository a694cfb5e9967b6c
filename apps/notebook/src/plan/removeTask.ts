import type { Edit } from "./edit.ts";
import { statedAt } from "./stated.ts";

type Data = Record<string, unknown>;

/** What takes something out of the plan: the edits, and what goes with it, in words; or why it has to stay. */
export type Removal = { edits: Edit[]; words: string } | { refused: string };

/**
 * Takes a task out of the document together with every link to it. What counted from it falls back to what the format
 * says where nothing is written, and that is told.
 *
 * @param stated  The document as plain data.
 */
export function removeTask(stated: unknown, at: number): Removal {
  const task = data(listAt(stated, "tasks")[at]);
  const id = String(task.id);
  const edits: Edit[] = [];
  const told: string[] = [];
  const without = (path: string, is: (item: unknown) => boolean): boolean => {
    const kept = list(statedAt(stated, path)).filter((item) => !is(item));
    if (kept.length === list(statedAt(stated, path)).length) return false;
    edits.push({ path, value: kept.length === 0 ? undefined : kept });
    return true;
  };

  const waited = listAt(stated, "tasks").filter(
    (_, other) =>
      other !== at &&
      without(
        `${place(stated, "tasks", other)}.after`,
        (link) => (typeof link === "string" ? link : data(link).task) === id,
      ),
  );
  if (waited.length > 0)
    told.push(`${names(waited)} no longer ${waited.length === 1 ? "waits" : "wait"} for it`);

  for (const key of ["risks", "assumptions"]) {
    for (const [e, entry] of listAt(stated, key).entries()) {
      const owner = `${place(stated, key, e)}.impacts`;
      const impacts = list(data(entry).impacts);
      const gone: number[] = [];
      let touched = false;
      for (const [k, impact] of impacts.entries()) {
        const tasks = list(data(impact).tasks);
        if (!tasks.includes(id)) continue;
        touched = true;
        if (tasks.length === 1) gone.push(k);
        else without(`${place(stated, owner, k)}.tasks`, (one) => one === id);
      }
      edits.push(...leave(stated, owner, gone));
      if (touched) told.push(`“${data(entry).name ?? data(entry).statement}” no longer touches it`);
    }
  }

  const together: number[] = [];
  for (const [c, correlation] of listAt(stated, "correlations").entries()) {
    const own = [id, `cost:${id}`];
    const left = list(data(correlation).between).filter((one) => !own.includes(String(one)));
    if (left.length === list(data(correlation).between).length) continue;
    if (left.length < 2) together.push(c);
    else edits.push({ path: `${place(stated, "correlations", c)}.between`, value: left });
    const others = listAt(stated, "tasks").filter((one) =>
      left.some((draw) => String(draw).replace(/^cost:/, "") === data(one).id),
    );
    told.push(`it no longer moves together with ${names(others)}`);
  }
  edits.push(...leave(stated, "correlations", together));

  const spans = listAt(stated, "intervals").flatMap((one, i) =>
    data(one).from === id || data(one).to === id ? [i] : [],
  );
  for (const i of spans) told.push(`the span “${data(listAt(stated, "intervals")[i]).name}” goes with it`);
  edits.push(...leave(stated, "intervals", spans));

  for (const [i, overhead] of listAt(stated, "overheads").entries()) {
    for (const [key, instead] of [
      ["from", "from the start of the plan"],
      ["to", "to the finish of the plan"],
    ] as const) {
      if (data(overhead)[key] !== id) continue;
      edits.push({ path: `${place(stated, "overheads", i)}.${key}`, value: undefined });
      told.push(`“${data(overhead).name}” now runs ${instead}`);
    }
  }
  for (const [i, benefit] of listAt(stated, "benefits").entries()) {
    if (data(benefit).starts !== id) continue;
    edits.push({ path: `${place(stated, "benefits", i)}.starts`, value: undefined });
    told.push(`“${data(benefit).name}” now begins with the finish of the plan`);
  }
  if (statedAt(stated, "commitment.finishOf") === id) {
    edits.push({ path: "commitment.finishOf", value: undefined });
    told.push("the commitment now counts the finish of the whole plan");
  }
  edits.push(...unaccepted(stated, id));
  edits.push({ path: place(stated, "tasks", at), value: undefined });
  const words = told.length === 0 ? "" : ` ${sentence(told)}`;
  return { edits, words: `Removed “${task.name}”.${words} Undo brings it back.` };
}

/** Findings accepted for it are no longer. */
export function unaccepted(stated: unknown, id: string): Edit[] {
  const gone: number[] = [];
  const edits: Edit[] = [];
  for (const [i, one] of listAt(stated, "acceptedFindings").entries()) {
    const ids = list(data(one).ids);
    if (!ids.includes(id)) continue;
    if (ids.length === 1) gone.push(i);
    else
      edits.push({
        path: `${place(stated, "acceptedFindings", i)}.ids`,
        value: ids.filter((each) => each !== id),
      });
  }
  return [...edits, ...leave(stated, "acceptedFindings", gone)];
}

/** Takes items out of a list, from its end; the key goes with the last of them. */
export function leave(stated: unknown, path: string, places: readonly number[]): Edit[] {
  const all = statedAt(stated, path);
  if (places.length > 0 && places.length === list(all).length) return [{ path, value: undefined }];
  return [...places].reverse().map((at) => ({ path: place(stated, path, at), value: undefined }));
}

/** The path of an item; an item that stands in for its list has the path of the list. */
export function place(stated: unknown, path: string, at: number): string {
  return Array.isArray(statedAt(stated, path)) ? `${path}[${at}]` : path;
}

export function listAt(stated: unknown, path: string): readonly unknown[] {
  return list(statedAt(stated, path));
}

function list(value: unknown): readonly unknown[] {
  return value === undefined || value === null ? [] : Array.isArray(value) ? value : [value];
}

export function data(value: unknown): Data {
  return typeof value === "object" && value !== null ? (value as Data) : {};
}

function names(items: readonly unknown[]): string {
  const quoted = items.map((item) => `“${data(item).name}”`);
  return quoted.length <= 3
    ? joined(quoted)
    : `${quoted.slice(0, 2).join(", ")} and ${quoted.length - 2} more`;
}

function joined(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

function sentence(parts: readonly string[]): string {
  const text = parts.join("; ");
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}
