import type { Estimate } from "@leeway/core";
import { readEstimateCells } from "./estimateEntry.ts";
import { findTasks } from "./findTasks.ts";
import { idsIn, newId } from "./newId.ts";
import { readChance } from "./readChance.ts";
import { readNumber } from "./readNumber.ts";

export interface EntryCells {
  name: string;
  chance: string;
  low: string;
  likely: string;
  high: string;
  tasks: string;
}
export interface ResponseCells {
  action: string;
  cost: string;
  chance: string;
}
type Made<C> = { item: Record<string, unknown>; name: string } | { cell: keyof C; words: string };

const certain: Estimate = { kind: "fixed", value: 0, unit: "days" };

/** A risk or an assumption for the document from the cells of a new row. */
export function newEntry(
  kind: "risk" | "assumption",
  cells: EntryCells,
  stated: unknown,
  tasks: readonly { id: string; name: string }[],
): Made<EntryCells> {
  const name = cells.name.trim();
  if (name === "") {
    const words =
      kind === "risk" ? "Write what may happen, in a few words." : "Write what the plan counts on.";
    return { cell: "name", words };
  }
  const chance = readChance(cells.chance);
  if ("words" in chance) return { cell: "chance", words: chance.words };
  const delays = [cells.low, cells.likely, cells.high].some((cell) => cell.trim() !== "");
  const touched = findTasks(cells.tasks, tasks);
  if ("words" in touched) return { cell: "tasks", words: touched.words };
  const delay = delays ? readEstimateCells(cells, certain, "delay", undefined, "working days") : undefined;
  if (delay !== undefined && "words" in delay) return { cell: "likely", words: delay.words };
  const { ids } = touched;
  if (delay !== undefined && ids.length === 0)
    return { cell: "tasks", words: "Which task does it delay? Write its name, or a part of it." };
  if (delay === undefined && ids.length > 0)
    return { cell: "likely", words: "By how many working days does it delay that? Give a likely value." };
  const impacts =
    delay === undefined
      ? {}
      : { impacts: { tasks: ids.length === 1 ? ids[0] : ids, delay: delay.edits[0]?.value ?? 0 } };
  const id = newId(name, idsIn(stated), kind);
  return {
    name,
    item:
      kind === "risk"
        ? { id, name, probability: chance.value, ...impacts }
        : { id, statement: name, chanceWrong: chance.value, ...impacts },
  };
}

/** A response for the document; it is adopted by a tick, like any other. */
export function newResponse(cells: ResponseCells, stated: unknown, currency: string): Made<ResponseCells> {
  const action = cells.action.trim();
  if (action === "") return { cell: "action", words: "Write what can be done, in a few words." };
  const cost = cells.cost.trim() === "" ? undefined : readNumber(cells.cost, `a sum in ${currency}`, "4000");
  if (cost !== undefined && "words" in cost) return { cell: "cost", words: cost.words };
  const chance = cells.chance.trim() === "" ? undefined : readChance(cells.chance);
  if (chance !== undefined && "words" in chance) return { cell: "chance", words: chance.words };
  return {
    name: action,
    item: {
      id: newId(action, idsIn(stated), "response"),
      action,
      ...(cost === undefined ? {} : { cost: cost.value }),
      ...(chance === undefined ? {} : { probability: chance.value }),
    },
  };
}
