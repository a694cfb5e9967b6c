import type { Plan, Table } from "@leeway/core";
import { figureText } from "../../plan/figureText.ts";
import { taskUnit } from "../../plan/unitWords.ts";

const headings: Readonly<Record<string, string>> = {
  name: "Task",
  of: "Of its",
  low: "Low",
  likely: "Likely",
  high: "High",
  unit: "In",
  shape: "Shape",
  bounds: "Low and high are",
  outcomes: "Outcomes",
  note: "Note",
  estimatedBy: "Estimated by",
  basis: "Why they would know",
};
const estimates: Readonly<Record<string, string>> = {
  duration: "duration",
  effort: "effort",
  remaining: "remainder",
  cost: "cost",
  costPerDay: "cost each working day",
};

/** The estimates of all tasks as a reader is told them: names for ids, units with the figures, no column without a word. */
export function writtenEstimates({ header, rows }: Table, plan: Plan): Table {
  const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
  const people = new Map([...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, name]));
  const at = (name: string) => header.indexOf(name);
  const told = (row: Table["rows"][number], key: string): string => {
    const value = row[at(key)] ?? "";
    const of = String(row[at("of")] ?? "");
    const task = tasks.get(String(row[at("task")]));
    if (key === "of") return estimates[of] ?? of;
    if (key === "name") return String(value) || String(row[at("task")] ?? "");
    if (key === "unit") {
      if (of.startsWith("cost")) return plan.currency;
      return task === undefined ? String(value) : taskUnit(task);
    }
    if (key === "estimatedBy")
      return String(value)
        .split(/[,;]\s*/)
        .map((id) => people.get(id) ?? id)
        .join(", ");
    return typeof value === "number" ? figureText(value) : value;
  };
  const full = rows.map((row) => Object.keys(headings).map((key) => told(row, key)));
  const kept = Object.keys(headings).map((_, column) => full.some((row) => row[column] !== ""));
  return {
    header: Object.values(headings).filter((_, column) => kept[column]),
    rows: full.map((row) => row.filter((_, column) => kept[column])),
  };
}
