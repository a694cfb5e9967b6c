import type { Block } from "../../simulate/block.ts";
import type { Amount, Model, ModelEntry, ModelTask, TaskImpact } from "../../simulate/model.ts";
import type { FutureEvent } from "../types.ts";

/**
 * The register in iteration k: what occurred, and what it did to tasks that are needed and not finished. A factor's days
 * are the sampled duration times (factor - 1), factors one after the other in the order of the register, as for drivers.
 */
export function eventsOf(model: Model, block: Block, k: number): FutureEvent[] {
  const drawnOf = ({ slot, value }: Amount): number =>
    slot < 0 ? value : ((block.draws[slot] as Float64Array)[k] as number);
  const did = model.register.map(() => ({ days: 0, waited: 0 }));
  model.tasks.forEach((task, j) => {
    if (block.needed[j]?.[k] === 0 || task.progress?.finished === true) return;
    let sampled = sampledOf(task, drawnOf);
    for (const at of task.impacts) {
      const entry = model.register[at.entry] as ModelEntry;
      if (block.occurs[at.entry]?.[k] !== 1) continue;
      const into = did[at.entry] as { days: number; waited: number };
      const impact = entry.impacts[at.impact] as ModelEntry["impacts"][number];
      into.days += daysOf(impact.delay, at, drawnOf);
      into.waited += impact.wait === undefined ? 0 : at.waitScale * drawnOf(impact.wait);
      if (impact.factor === undefined) continue;
      const more = sampled * entry.scale * (drawnOf(impact.factor) - 1);
      into.days += more;
      sampled += more;
    }
  });
  return model.register.map((entry, e): FutureEvent => {
    const occurred = block.occurs[e]?.[k] === 1;
    let money = 0;
    if (occurred)
      for (const { cost } of entry.impacts) money += cost === undefined ? 0 : entry.scale * drawnOf(cost);
    return {
      id: entry.id,
      name: entry.name,
      kind: entry.kind,
      chance: entry.fact ?? Math.max(0, Math.min(1, entry.hi - entry.lo)),
      occurred,
      ...(did[e] as { days: number; waited: number }),
      money,
    };
  });
}

function daysOf(delay: Amount | undefined, at: TaskImpact, drawnOf: (amount: Amount) => number): number {
  return delay === undefined ? 0 : at.delayScale * drawnOf(delay);
}

/** The task's duration, or what remains of it, before any impact: working days. */
function sampledOf(task: ModelTask, drawnOf: (amount: Amount) => number): number {
  const { progress } = task;
  if (progress?.remaining !== undefined) return drawnOf(progress.remaining) * progress.remainingScale;
  return drawnOf(task.duration) * task.durationScale;
}
