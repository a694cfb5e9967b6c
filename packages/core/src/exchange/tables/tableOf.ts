import type { Json } from "../../plan/source/toJson.ts";
import { cellOf } from "./cell.ts";
import { REGISTER_HEADINGS } from "./columns.ts";
import { columnsOf, entriesOf, type TableOfPlan } from "./entries.ts";

/** A table before it is written: headings, and rows of cells under them. */
export interface Table {
  header: string[];
  rows: (string | number)[][];
}

/**
 * Tasks, people or the register as a table that loses nothing: every key has a column, and a cell holds what the plan
 * holds. Columns that no row needs are left out, except those everybody looks for.
 *
 * @param document  The plan document as written.
 */
export function tableOf(document: Json, table: TableOfPlan): Table {
  const entries = entriesOf(document, table);
  if (table === "register") {
    const rows = entries.map(({ what, of, id, value }) =>
      REGISTER_HEADINGS.map((heading) => {
        if (heading === "what") return what;
        if (heading === "of") return of;
        if (heading === "id") return what === "impact" ? Number(id) : id;
        const column = columnsOf(what).find((each) => each.heading === heading);
        return column === undefined ? "" : cellOf(value[column.key], column.kind);
      }),
    );
    return { header: [...REGISTER_HEADINGS], rows };
  }
  const columns = columnsOf(table === "tasks" ? "task" : "person").filter(
    ({ key, always }) => always || entries.some(({ value }) => value[key] !== undefined),
  );
  return {
    header: columns.map(({ heading }) => heading),
    rows: entries.map(({ value }) => columns.map(({ key, kind }) => cellOf(value[key], kind))),
  };
}
