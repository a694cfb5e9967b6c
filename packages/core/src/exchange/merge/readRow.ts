import { oneLine } from "../../plan/oneLine.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Json } from "../../plan/source/toJson.ts";
import { cellOf, sameValue, valueIn } from "../tables/cell.ts";
import type { Column } from "../tables/columns.ts";
import { columnsOf, type JsonObject } from "../tables/entries.ts";
import type { Row } from "./rowsOf.ts";
import { cellPlace } from "./types.ts";

export interface CellChange {
  column: Column;
  /** Absent: the cell is empty and the plan has something there. */
  value: Json | undefined;
}
export interface RowContext {
  semicolons: boolean;
  problems: Problem[];
  /** Called with the first decimal comma. */
  onComma: (place: string, cell: string) => void;
}

/** What a row says that differs from what the plan has; a cell as it was written changes nothing. */
export function readRow(row: Row, current: JsonObject | undefined, context: RowContext): CellChange[] {
  return columnsOf(row.what).flatMap((column): CellChange[] => {
    const { heading, key, kind } = column;
    const cell = key === "id" ? row.id : row.cell(heading);
    if (cell === undefined) return [];
    const before = current?.[key];
    if (cell === String(cellOf(before, kind))) return [];
    const read = valueIn(cell, kind, context.semicolons);
    const place = cellPlace(row.row, heading);
    if ("rule" in read) {
      context.problems.push({ ...read, severity: "error", path: place, received: oneLine(cell) });
      return [];
    }
    if (read.comma) context.onComma(place, cell.trim());
    return sameValue(read.value, before, kind) ? [] : [{ column, value: read.value }];
  });
}
