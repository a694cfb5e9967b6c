import type { Block } from "../../simulate/block.ts";
import type { Amount, Model, ModelTask, Slot } from "../../simulate/model.ts";
import { named } from "../paths/boundJson.ts";
import type { Future, FutureDraw, Named } from "../types.ts";
import { levelOf } from "./levelOf.ts";

/** Where a slot is used. */
type Use = Pick<FutureDraw, "of" | "what" | "unit" | "counts" | "on">;

/** Every estimate of the model as iteration k of the block drew it, tasks first, in the order of the model. */
export function drawsOf(model: Model, block: Block, k: number): Future["draws"] {
  const draws: FutureDraw[] = [];
  const add = (amount: Amount | undefined, use: Use) => {
    if (amount === undefined || amount.slot < 0) return;
    const slot = model.slots[amount.slot] as Slot;
    const value = (block.draws[amount.slot] as Float64Array)[k] as number;
    const time = use.unit === "days" && slot.estimate.unit === "weeks";
    draws.push({
      of: use.of,
      what: use.what,
      ...(use.on === undefined ? {} : { on: use.on }),
      value,
      unit: time ? "weeks" : use.unit,
      asWritten: slot.asWritten,
      level: levelOf(slot.estimate, value),
      counts: use.counts,
    });
  };
  model.tasks.forEach((task, j) => {
    const needed = block.needed[j]?.[k] !== 0;
    addTask(model, task, needed, add);
  });
  addRegister(model, block, k, add);
  for (const response of model.responses) {
    add(response.cost, { of: named(response), what: "cost", unit: "money", counts: true });
  }
  for (const overhead of model.overheads) {
    add(overhead.perDay, { of: named(overhead), what: "perDay", unit: "money", counts: true });
  }
  const late: Named = { id: "lateness", name: "Lateness" };
  add(model.lateness?.perWeek, { of: late, what: "perWeek", unit: "money", counts: true });
  add(model.lateness?.once, { of: late, what: "once", unit: "money", counts: true });
  for (const benefit of model.benefits) {
    const { amount } = model.plan.benefits.find(({ id }) => id === benefit.id) ?? {};
    const unit = amount === undefined ? "quantity" : "money";
    add(benefit.amount, {
      of: named(benefit),
      what: amount === undefined ? "quantity" : "amount",
      unit,
      counts: true,
    });
  }
  return draws;
}

type Add = (amount: Amount | undefined, use: Use) => void;

function addTask(model: Model, task: ModelTask, needed: boolean, add: Add): void {
  const of = named(task);
  const { progress } = task;
  const slot = model.slots[task.duration.slot];
  const remains = progress?.remaining !== undefined;
  add(task.duration, { of, what: slot?.purpose ?? "duration", unit: "days", counts: needed && !remains });
  add(progress?.remaining, { of, what: "remaining", unit: "days", counts: true });
  for (const link of task.links) {
    const from = model.tasks[link.from];
    add(link.lag, {
      of,
      what: "lag",
      unit: "days",
      counts: progress === undefined,
      ...(from === undefined ? {} : { on: [named(from)] }),
    });
  }
  const paid = needed && !(progress?.finished === true && progress.spent !== undefined);
  add(task.cost, { of, what: "cost", unit: "money", counts: paid });
  add(task.costPerDay, { of, what: "costPerDay", unit: "money", counts: paid });
}

function addRegister(model: Model, block: Block, k: number, add: Add): void {
  model.register.forEach((entry, e) => {
    const counts = block.occurs[e]?.[k] === 1;
    const of = named(entry);
    for (const impact of entry.impacts) {
      const on = impact.tasks.flatMap((j) => model.tasks[j] ?? []).map(named);
      const use = { of, counts, ...(on.length === 0 ? {} : { on }) };
      add(impact.delay, { ...use, what: "delay", unit: "days" });
      add(impact.factor, { ...use, what: "factor", unit: "times" });
      add(impact.wait, { ...use, what: "wait", unit: "days" });
      add(impact.cost, { ...use, what: "cost", unit: "money" });
    }
  });
}
