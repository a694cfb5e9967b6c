import type { Json } from "../plan/source/toJson.ts";
import type { PlanData } from "./testModel.ts";

/** Estimates and predecessors by task; a predecessor is an id or a link object of the plan format. */
export interface NetworkTable {
  title: string;
  durations: Readonly<Record<string, Json>>;
  after: Readonly<Record<string, readonly Json[]>>;
  names?: Readonly<Record<string, string>>;
}

/** The plan document of a table of tasks, on a calendar without days off, so that moments are plain days. */
export function networkDocument(table: NetworkTable, keys: PlanData = {}): PlanData {
  return {
    format: 1,
    title: table.title,
    start: "2027-03-01",
    calendar: "every-day",
    tasks: Object.entries(table.durations).map(([id, duration]) => ({
      id,
      name: table.names?.[id] ?? id.toUpperCase(),
      duration,
      after: [...(table.after[id] ?? [])],
    })),
    ...keys,
  };
}
