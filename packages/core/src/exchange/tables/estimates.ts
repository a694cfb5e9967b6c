import { isObject } from "../../plan/edit/model.ts";
import { renderFlow } from "../../plan/edit/render.ts";
import type { Json } from "../../plan/source/toJson.ts";
import { cellOf } from "./cell.ts";
import { type Entry, entriesOf, type JsonObject } from "./entries.ts";
import type { Table } from "./tableOf.ts";

/** Which of a task's estimates have rows, in this order. */
export const ESTIMATES_OF = ["duration", "effort", "remaining", "cost", "costPerDay"] as const;
export type EstimateOf = (typeof ESTIMATES_OF)[number];

export const ESTIMATE_HEADINGS = [
  "task",
  "name",
  "of",
  "low",
  "likely",
  "high",
  "shape",
  "bounds",
  "unit",
  "outcomes",
  "note",
  "estimatedBy",
  "basis",
] as const;
/** The parts of an estimate that have a column of their own. */
export const PARTS = ["low", "likely", "high", "shape", "bounds", "unit", "outcomes", "note"] as const;
export type Part = (typeof PARTS)[number];

export interface EstimateEntry {
  entry: Entry;
  of: EstimateOf;
  value: Json;
  /** The first of its task: who said so and why stands in this row. */
  first: boolean;
}

/** Every estimate of every task, in the order of the document. */
export function estimatesOf(document: Json): EstimateEntry[] {
  return entriesOf(document, "tasks").flatMap((entry) =>
    ESTIMATES_OF.flatMap((of) => {
      const value = entry.value[of];
      return value === undefined ? [] : [{ of, value }];
    }).map(({ of, value }, index) => ({ entry, of, value, first: index === 0 })),
  );
}

/** The parts of an estimate in whichever form it is written; a certain one has only `likely`. */
export function partsOf(value: Json): JsonObject {
  if (Array.isArray(value)) {
    const [low, likely, high] = value;
    return {
      ...(low !== undefined && { low }),
      ...(likely !== undefined && { likely }),
      ...(high !== undefined && { high }),
    };
  }
  return isObject(value) ? value : { likely: value };
}

/**
 * The estimates of all tasks, a row each: low, likely and high in cells of their own. Who said so and why they would
 * know stands in the first row of a task.
 */
export function estimateTable(document: Json): Table {
  const rows = estimatesOf(document).map(({ entry, of, value, first }) => {
    const parts = partsOf(value);
    const number = (part: Json | undefined) => (typeof part === "number" ? part : "");
    return ESTIMATE_HEADINGS.map((heading) => {
      if (heading === "task") return entry.id;
      if (heading === "name") return cellOf(entry.value.name, "text");
      if (heading === "of") return of;
      if (heading === "estimatedBy" || heading === "basis") {
        return first ? cellOf(entry.value[heading], heading === "basis" ? "text" : "list") : "";
      }
      if (heading === "low" || heading === "likely" || heading === "high") return number(parts[heading]);
      if (heading === "outcomes")
        return parts.outcomes === undefined ? "" : renderFlow(parts.outcomes, false);
      return cellOf(parts[heading], "text");
    });
  });
  return { header: [...ESTIMATE_HEADINGS], rows };
}
