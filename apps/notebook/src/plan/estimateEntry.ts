import type { Estimate } from "@leeway/core";
import type { Edit } from "./edit.ts";
import { figureText } from "./figureText.ts";
import { readNumber } from "./readNumber.ts";

/** The three cells of an estimate as text; empty where the estimate has no such value. */
export interface EstimateCells {
  low: string;
  likely: string;
  high: string;
}

/** What an estimate's cells show. An estimate by outcomes has no cells: undefined. */
export function estimateCells(estimate: Estimate): EstimateCells | undefined {
  switch (estimate.kind) {
    case "fixed":
      return { low: "", likely: figureText(estimate.value), high: "" };
    case "range":
      return {
        low: figureText(estimate.low),
        likely: estimate.likely === undefined ? "" : figureText(estimate.likely),
        high: figureText(estimate.high),
      };
    case "outcomes":
      return undefined;
  }
}

/** Whether the likely cell may be filled: some shapes are given by their low and high alone. */
export function takesLikely(estimate: Estimate): boolean {
  return estimate.kind !== "range" || estimate.likely !== undefined;
}

type Values = { low?: number; likely?: number; high?: number };

/**
 * The edits that make the document say what the cells say.
 *
 * The author's way of writing is kept: a list stays a list, a map a map, and only what changed is touched.
 * One likely value alone is a certain estimate.
 *
 * @param path  Where the estimate stands, as the document has it.
 * @param stated  What stands there now.
 * @param unit  In words, for the messages: "working days".
 */
export function readEstimateCells(
  cells: EstimateCells,
  estimate: Estimate,
  path: string,
  stated: unknown,
  unit: string,
): { edits: Edit[] } | { words: string } {
  const values: Values = {};
  for (const key of ["low", "likely", "high"] as const) {
    if (cells[key].trim() === "") continue;
    const entry = readNumber(cells[key], `a number of ${unit}`, "7 or 2.5");
    if ("words" in entry) return entry;
    values[key] = entry.value;
  }
  const { low, likely, high } = values;
  const ranged = low !== undefined && high !== undefined;
  if (!ranged && (low !== undefined || high !== undefined)) {
    return { words: "Give both a low and a high value, or neither when the likely value is certain." };
  }
  if (likely === undefined && (takesLikely(estimate) || !ranged)) {
    return { words: `Give a likely value, in ${unit}.` };
  }
  if (ranged && (low > high || (likely !== undefined && (likely < low || likely > high)))) {
    return { words: orderWords(values, unit) };
  }
  return { edits: ranged ? rangeEdits(values, path, stated) : fixedEdits(likely ?? 0, path, stated) };
}

function orderWords({ low, likely, high }: Values, unit: string): string {
  const middle = likely === undefined ? "" : `, likely ${likely}`;
  return `Low ${low}${middle}, high ${high} ${unit} are out of order: low comes first, high last. Change the one that is wrong.`;
}

function fixedEdits(value: number, path: string, stated: unknown): Edit[] {
  return stated === value ? [] : [{ path, value }];
}

function rangeEdits(values: Values, path: string, stated: unknown): Edit[] {
  const keys = (["low", "likely", "high"] as const).filter((key) => values[key] !== undefined);
  if (Array.isArray(stated) && stated.length === keys.length) {
    return keys.flatMap((key, at) =>
      stated[at] === values[key] ? [] : [{ path: `${path}[${at}]`, value: values[key] }],
    );
  }
  if (typeof stated === "object" && stated !== null && "low" in stated) {
    const before = stated as Record<string, unknown>;
    return keys.flatMap((key) =>
      before[key] === values[key] ? [] : [{ path: `${path}.${key}`, value: values[key] }],
    );
  }
  return [{ path, value: keys.map((key) => values[key]) }];
}
