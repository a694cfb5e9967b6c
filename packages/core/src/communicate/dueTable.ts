import type { Table } from "../exchange/tables/tableOf.ts";
import type { DueList } from "./types.ts";

/** The due list as a table, a row for each occasion. */
export function dueTable({ due }: DueList): Table {
  return {
    header: ["date", "moved from", "whom", "id", "what", "how", "who sees to it", "rhythm", "milestone"],
    rows: due.map(({ date, movedFrom = "", stakeholder, what = "", how = "", owner, every, milestone }) => [
      date,
      movedFrom,
      stakeholder.name,
      stakeholder.id,
      what,
      how,
      owner?.name ?? "",
      every,
      milestone?.name ?? "",
    ]),
  };
}
