import type { Estimate } from "@leeway/core";
import { type EstimateCells, readEstimateCells } from "./estimateEntry.ts";
import { readLinksCell } from "./linksEntry.ts";
import { idsIn, newId } from "./newId.ts";

export interface TaskCells extends EstimateCells {
  name: string;
  after: string;
}

const certain: Estimate = { kind: "fixed", value: 0, unit: "days" };

/**
 * A task for the document from the cells of a new row.
 *
 * @param tasks  The tasks there are.
 * @returns The task; or the cell that is missing or cannot be read, and why.
 */
export function newTask(
  cells: TaskCells,
  stated: unknown,
  tasks: readonly { id: string; name: string }[],
  phase: string | undefined,
): { task: Record<string, unknown> & { id: string } } | { cell: keyof TaskCells; words: string } {
  const name = cells.name.trim();
  if (name === "") return { cell: "name", words: "A task needs a name. Write what is done, in a few words." };
  const estimate = readEstimateCells(cells, certain, "duration", undefined, "working days");
  if ("words" in estimate) {
    const [cell = "likely"] = (["likely", "low", "high"] as const).filter((key) => cells[key].trim() === "");
    return { cell, words: estimate.words };
  }
  const id = newId(name, idsIn(stated), "task");
  const links = readLinksCell(
    cells.after,
    "after",
    undefined,
    new Set(tasks.map((task) => task.id)),
    id,
    tasks,
  );
  if ("words" in links) return { cell: "after", words: links.words };
  const after = links.edits[0]?.value;
  return {
    task: {
      id,
      name,
      ...(phase === undefined ? {} : { phase }),
      duration: estimate.edits[0]?.value ?? 0,
      ...(Array.isArray(after) ? { after: after.length === 1 ? after[0] : after } : {}),
    },
  };
}
