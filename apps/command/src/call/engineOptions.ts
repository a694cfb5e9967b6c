import type { Design } from "@leeway/core";
import type { OptionValues } from "./optionValues.ts";

/** The plan format's own limit. */
export const MOST_ITERATIONS = 10_000_000;

/** What the verbs that simulate have in common (`commonOptions.ts`); absent where it was not given. */
export interface EngineOptions {
  iterations?: number;
  seed?: string;
  confidence?: number;
  design?: Design;
  with?: string[];
  without?: string[];
}

/** Leaves out what was not given: an absent key and an undefined one are not the same to the engine. */
export function given<T extends object>(options: { [K in keyof T]: T[K] | undefined }): Partial<T> {
  const kept = Object.entries(options).filter(([, value]) => value !== undefined);
  return Object.fromEntries(kept) as Partial<T>; // what is left has the types it came with
}

/** Reads them; those a verb does not have are never in its call. Values that break their rule become problems. */
export function engineOptions(values: OptionValues): EngineOptions {
  return given<Required<EngineOptions>>({
    iterations: values.count("iterations", MOST_ITERATIONS),
    seed: values.text("seed"),
    confidence: values.chance("confidence"),
    design: values.oneOf("design", ["latin-hypercube", "plain"]),
    with: values.ids("with"),
    without: values.ids("without"),
  });
}
