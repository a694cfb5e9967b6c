import type { Estimate } from "@leeway/core";
import { readEstimateCells } from "./estimateEntry.ts";
import { findTasks } from "./findTasks.ts";
import { readNumber } from "./readNumber.ts";

export interface EffectCells {
  tasks: string;
  low: string;
  likely: string;
  high: string;
  cost: string;
}

const certain: Estimate = { kind: "fixed", value: 0, unit: "days" };

/** An effect of a risk or an assumption, for the document, from the cells of a new line. */
export function newEffect(
  cells: EffectCells,
  tasks: readonly { id: string; name: string }[],
  currency: string,
): { item: Record<string, unknown> } | { cell: keyof EffectCells; words: string } {
  const found = findTasks(cells.tasks, tasks);
  if ("words" in found) return { cell: "tasks", words: found.words };
  const { ids } = found;
  if (ids.length === 0)
    return { cell: "tasks", words: "Which task does it touch? Write its name, or a part of it." };
  const delays = [cells.low, cells.likely, cells.high].some((cell) => cell.trim() !== "");
  const delay = delays ? readEstimateCells(cells, certain, "delay", undefined, "working days") : undefined;
  if (delay !== undefined && "words" in delay) return { cell: "likely", words: delay.words };
  const cost = cells.cost.trim() === "" ? undefined : readNumber(cells.cost, `a sum in ${currency}`, "4000");
  if (cost !== undefined && "words" in cost) return { cell: "cost", words: cost.words };
  if (delay === undefined && cost === undefined)
    return { cell: "likely", words: "Say by how many working days it delays that, or what it costs." };
  return {
    item: {
      tasks: ids.length === 1 ? ids[0] : ids,
      ...(delay === undefined ? {} : { delay: delay.edits[0]?.value ?? 0 }),
      ...(cost === undefined ? {} : { cost: cost.value }),
    },
  };
}
