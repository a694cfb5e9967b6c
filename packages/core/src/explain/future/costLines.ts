import { workAt } from "../../calendar/workCalendar.ts";
import type { Block } from "../../simulate/block.ts";
import type { Amount, Model } from "../../simulate/model.ts";
import { taskCost } from "../../simulate/money.ts";
import type { CostLine } from "../types.ts";

/**
 * The cost of iteration k line by line, in the order in which the total is added up (tasks, register, responses,
 * overheads), so that the lines add up to it to the last bit. Lines of nought are left out: they add nothing.
 */
export function costLines(model: Model, block: Block, k: number): CostLine[] {
  const drawnOf = ({ slot, value }: Amount): number =>
    slot < 0 ? value : ((block.draws[slot] as Float64Array)[k] as number);
  const lines: CostLine[] = [];
  const add = (kind: CostLine["kind"], { id, name }: { id: string; name: string }, money: number) => {
    if (money !== 0) lines.push({ kind, id, name, money });
  };
  model.tasks.forEach((task, j) => {
    if (taskCost(task, j, block, block.scratch)) add("task", task, block.scratch[k] as number);
  });
  model.register.forEach((entry, e) => {
    if (block.occurs[e]?.[k] !== 1) return;
    for (const { cost } of entry.impacts) {
      if (cost !== undefined) add(entry.kind, entry, entry.scale * drawnOf(cost));
    }
  });
  for (const response of model.responses) add("response", response, drawnOf(response.cost));
  for (const overhead of model.overheads) {
    const from = overhead.from < 0 ? undefined : (block.start[overhead.from] as Float64Array)[k];
    const to = (overhead.to < 0 ? block.planFinish : (block.finish[overhead.to] as Float64Array))[
      k
    ] as number;
    const before = from === undefined ? 0 : workAt(model.planCalendar, from);
    const days = workAt(model.planCalendar, to) - before;
    add("overhead", overhead, days > 0 ? drawnOf(overhead.perDay) * days : 0);
  }
  return lines;
}
