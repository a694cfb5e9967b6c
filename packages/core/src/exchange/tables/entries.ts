import { isObject } from "../../plan/edit/model.ts";
import type { Json } from "../../plan/source/toJson.ts";
import { type Column, PERSON_COLUMNS, REGISTER_COLUMNS, TASK_COLUMNS } from "./columns.ts";

/** A table that can be taken out of a plan and back in. */
export type TableOfPlan = "tasks" | "people" | "register";
export type EntryKind = "task" | "person" | keyof typeof REGISTER_COLUMNS;
export type JsonObject = { [key: string]: Json };

/** One thing of the plan that has a row of its own. */
export interface Entry {
  what: EntryKind;
  /** Id of the risk or assumption that an impact or a response belongs to. */
  of: string;
  /** Its id; of an impact its place among those of its entry, counted from 1. */
  id: string;
  value: JsonObject;
  /** Where it stands in the document. */
  path: readonly (string | number)[];
}

/** The columns that hold a kind. */
export function columnsOf(what: EntryKind): readonly Column[] {
  return what === "task" ? TASK_COLUMNS : what === "person" ? PERSON_COLUMNS : REGISTER_COLUMNS[what];
}

/** What makes two rows the same one. */
export function entryKey({ what, of, id }: Pick<Entry, "what" | "of" | "id">): string {
  return what === "impact" || what === "response" ? `${what} ${of} ${id}` : `${what} ${id}`;
}

/** Everything of a document that a table holds, in the order of the document. */
export function entriesOf(document: Json, table: TableOfPlan): Entry[] {
  if (!isObject(document)) return [];
  const listed = (what: EntryKind, list: string) =>
    itemsOf(document[list]).map((value, index): Entry => {
      return { what, of: "", id: textOf(value.id), value, path: [list, index] };
    });
  if (table === "tasks") return listed("task", "tasks");
  if (table === "people") return listed("person", "people");
  return [...listed("risk", "risks"), ...listed("assumption", "assumptions")].flatMap((entry) => [
    entry,
    ...itemsOf(entry.value.impacts).map((value, index): Entry => {
      const path = [...entry.path, "impacts", index];
      return { what: "impact", of: entry.id, id: String(index + 1), value, path };
    }),
    ...itemsOf(entry.value.responses).map((value, index): Entry => {
      const path = [...entry.path, "responses", index];
      return { what: "response", of: entry.id, id: textOf(value.id), value, path };
    }),
  ]);
}

/** The items of a list, or the single one that stands for it. */
function itemsOf(value: Json | undefined): JsonObject[] {
  if (Array.isArray(value)) return value.filter(isObject);
  return isObject(value) ? [value] : [];
}

function textOf(value: Json | undefined): string {
  return typeof value === "string" ? value : "";
}
