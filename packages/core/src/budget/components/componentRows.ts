import { eachBlock } from "../../explain/paths/eachBlock.ts";
import type { Draw } from "../../explain/variants.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Block } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import { addMoney, fillAmount, newMoneySums, taskCost } from "../../simulate/money.ts";
import { type ComponentKind, componentKinds, modelOfKind } from "./kinds.ts";

/** Money in every iteration, taken apart. Rows of length n. */
export interface ComponentRows {
  total: Float64Array;
  /** Only kinds that ever cost anything; they add up to the total in every iteration. */
  kinds: Map<ComponentKind, Float64Array>;
  /** By phase, in the plan's order; "" for money of no phase. They add up to the total likewise. */
  phases: Map<string, Float64Array>;
  /** Mean over the iterations by phase and kind. */
  means: Map<string, Map<ComponentKind, number>>;
}

/**
 * Takes the cost of every iteration apart, by kind and by phase, on the forecast's draws.
 *
 * Money of a phase: that of its tasks; what a risk costs goes in equal parts to the phases of the tasks it names, once
 * for each task. Responses, overheads and risks that name no task are of no phase.
 *
 * @param visit  Sees each block when it is placed and priced: `first` is its first iteration.
 *
 * Throws BeyondCalendarError. Cost: one run of the model, and a pass over the tasks for each kind.
 */
export function componentRows(
  model: Model,
  asWritten: AsWritten,
  draw: Draw,
  visit?: (block: Block, first: number) => void,
): ComponentRows {
  const n = draw.iterations;
  const phaseNames = [...new Set([...model.plan.phases.map(({ name }) => name), ...phasesOf(model), ""])];
  const total = new Float64Array(n);
  const kinds = new Map(componentKinds.map((kind) => [kind, new Float64Array(n)]));
  const phases = new Map(phaseNames.map((name) => [name, new Float64Array(n)]));
  const means = new Map(phaseNames.map((name) => [name, new Map<ComponentKind, number>()]));
  const byKind = componentKinds.map((kind) => ({ kind, tasks: modelOfKind(model, kind).tasks }));

  eachBlock(model, draw, asWritten.starts, (block, first) => {
    const { n: size, scratch: part } = block;
    const book = (kind: ComponentKind, phase: string) => {
      const row = kinds.get(kind) as Float64Array;
      const ofPhase = phases.get(phase) as Float64Array;
      let sum = 0;
      for (let k = 0; k < size; k++) {
        const amount = part[k] as number;
        row[first + k] = (row[first + k] as number) + amount;
        ofPhase[first + k] = (ofPhase[first + k] as number) + amount;
        sum += amount;
      }
      const ofMeans = means.get(phase) as Map<ComponentKind, number>;
      ofMeans.set(kind, (ofMeans.get(kind) ?? 0) + sum / n);
    };
    markFinish(model, block);
    addMoney(model, block, newMoneySums(model));
    total.set(block.cost.subarray(0, size), first);
    for (const { kind, tasks } of byKind)
      for (let j = 0; j < tasks.length; j++)
        if (taskCost(tasks[j] as ModelTask, j, block, part)) book(kind, tasks[j]?.phase ?? "");
    bookRegister(model, block, (phase) => book("risks", phase));
    for (const { cost } of model.responses) {
      fillAmount(cost, block, part);
      book("responses", "");
    }
    const running = { ...modelOfKind(model, "overheads"), tasks: [] };
    if (model.overheads.length > 0) {
      addMoney(running, block, newMoneySums(running));
      part.set(block.cost.subarray(0, size));
      book("overheads", "");
      block.cost.set(total.subarray(first, first + size));
    }
    visit?.(block, first);
  });
  for (const [kind, row] of kinds) if (row.every((sum) => sum === 0)) kinds.delete(kind);
  for (const [name, row] of phases) if (row.every((sum) => sum === 0)) phases.delete(name);
  return { total, kinds, phases, means };
}

/** What risks and assumptions cost, impact by impact and phase by phase, into the block's scratch row. */
function bookRegister(model: Model, block: Block, book: (phase: string) => void): void {
  const { n, scratch: part, scratch2: draws } = block;
  model.register.forEach((entry, e) => {
    const occurs = block.occurs[e] as Uint8Array;
    for (const { cost, tasks } of entry.impacts) {
      if (cost === undefined) continue;
      const shares = new Map<string, number>();
      for (const j of tasks) {
        const phase = model.tasks[j]?.phase ?? "";
        shares.set(phase, (shares.get(phase) ?? 0) + 1 / tasks.length);
      }
      if (tasks.length === 0) shares.set("", 1);
      fillAmount(cost, block, draws);
      for (const [phase, share] of shares) {
        for (let k = 0; k < n; k++)
          part[k] = occurs[k] === 1 ? share * entry.scale * (draws[k] as number) : 0;
        book(phase);
      }
    }
  });
}

function phasesOf({ tasks }: Model): string[] {
  return tasks.flatMap(({ phase }) => (phase === undefined ? [] : [phase]));
}
