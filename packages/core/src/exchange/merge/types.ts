import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Json } from "../../plan/source/toJson.ts";
import type { Count } from "../../units.ts";

/** What in the plan a table may take out. */
export interface ImportOptions {
  /** Also take out of the plan what the table leaves out, and empty what it leaves empty. */
  removeMissing?: boolean;
}

/** One thing that the table changes. */
export interface ImportChange {
  kind: "changed" | "added" | "removed";
  /** The row it came from; absent where there is none. */
  row?: Count;
  /** Whose: an id, or `RISK impact 2`. */
  of: string;
  /** The key, where one value changes. */
  key?: string;
  /** As the plan writes it; absent: the key was not there, or is there no more. */
  from?: Json;
  to?: Json;
}

/** A table merged into the text of a plan: the new text, what changed, and the problems. */
export interface Import {
  /** The plan with the table's values; the text as it came where a problem is an error, or where nothing changes. */
  text: string;
  changes: ImportChange[];
  /** Rows that say what the plan says. */
  unchanged: Count;
  /** Those of the table with row and column, e.g. `row 4, column “target”`. */
  problems: Problem[];
}

/** Where a problem of a table is. */
export function cellPlace(row: Count, heading?: string): string {
  return heading === undefined ? `row ${row}` : `row ${row}, column “${oneLine(heading, 40)}”`;
}
