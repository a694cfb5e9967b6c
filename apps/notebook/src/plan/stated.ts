import { pathSteps, type Step } from "./path.ts";

/**
 * What stands at a path of the plan document as its author wrote it, before defaults are filled in; undefined
 * when nothing is written there. An edit needs it: `[5, 7, 14]` is edited as a list and `{ low: 5, ... }` as a
 * map, so that the author's way of writing stays.
 *
 * @param stated  The document as plain data.
 * @param path  In the read plan, e.g. `tasks[3].duration`.
 */
export function statedAt(stated: unknown, path: string): unknown {
  let value = stated;
  for (const step of pathSteps(path)) {
    // In the format a list of one may be written without its brackets.
    if (step === 0 && value !== undefined && !Array.isArray(value)) continue;
    value = child(value, step);
  }
  return value;
}

function child(value: unknown, step: Step): unknown {
  if (Array.isArray(value)) return typeof step === "number" ? value[step] : undefined;
  if (typeof value !== "object" || value === null || typeof step === "number") return undefined;
  return Object.entries(value).find(([key]) => key === step)?.[1];
}
