import { parse } from "yaml";
import { pathSteps, pathText, type Step } from "./path.ts";

/**
 * The plan as its author wrote it, before defaults are filled in. An edit needs it: `[5, 7, 14]` is edited
 * as a list and `{ low: 5, ... }` as a map, so that the author's way of writing stays.
 */
export interface Stated {
  /** What stands at a path of the read plan; undefined when nothing is written there. */
  at(path: string): unknown;
  /**
   * The path as the document has it. In the format a list of one may be written without its brackets:
   * `risks[0].impacts[0].delay` is then `risks[0].impacts.delay`.
   */
  written(path: string): string;
}

/** Reads the text as plain data. Text that is not YAML states nothing. */
export function readStated(text: string): Stated {
  let root: unknown;
  try {
    root = parse(text);
  } catch {
    root = undefined;
  }
  const walk = (path: string): { value: unknown; steps: Step[] } => {
    let value = root;
    const steps: Step[] = [];
    for (const step of pathSteps(path)) {
      if (typeof step === "number" && step === 0 && value !== undefined && !Array.isArray(value)) continue;
      steps.push(step);
      value = child(value, step);
    }
    return { value, steps };
  };
  return { at: (path) => walk(path).value, written: (path) => pathText(walk(path).steps) };
}

function child(value: unknown, step: Step): unknown {
  if (Array.isArray(value)) return typeof step === "number" ? value[step] : undefined;
  if (typeof value !== "object" || value === null || typeof step === "number") return undefined;
  return Object.hasOwn(value, step) ? (value as Record<string, unknown>)[step] : undefined;
}
