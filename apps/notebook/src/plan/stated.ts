import { parse } from "yaml";
import { pathSteps, type Step } from "./path.ts";

/**
 * The plan as its author wrote it, before defaults are filled in. An edit needs it: `[5, 7, 14]` is edited
 * as a list and `{ low: 5, ... }` as a map, so that the author's way of writing stays.
 */
export interface Stated {
  /** What stands at a path of the read plan; undefined when nothing is written there. */
  at(path: string): unknown;
}

/** Reads the text as plain data. Text that is not YAML states nothing. Cost: one parse, once per text. */
export function readStated(text: string): Stated {
  let root: unknown;
  try {
    root = parse(text);
  } catch {
    root = undefined;
  }
  return {
    at(path) {
      let value = root;
      for (const step of pathSteps(path)) {
        // In the format a list of one may be written without its brackets.
        if (step === 0 && value !== undefined && !Array.isArray(value)) continue;
        value = child(value, step);
      }
      return value;
    },
  };
}

function child(value: unknown, step: Step): unknown {
  if (Array.isArray(value)) return typeof step === "number" ? value[step] : undefined;
  if (typeof value !== "object" || value === null || typeof step === "number") return undefined;
  return Object.entries(value).find(([key]) => key === step)?.[1];
}
