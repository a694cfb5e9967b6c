import type { Estimate, Plan } from "../../packages/core/src/plan/types.ts";

/** The value as written, in the written unit, before any cut at zero. */
export function writtenValue(estimate: Estimate): number {
  if (estimate.kind === "fixed") return estimate.value;
  if (estimate.kind === "outcomes") {
    // The most probable; they come in ascending order, so a tie keeps the smallest.
    let best = { value: Number.NaN, chance: -1 };
    for (const outcome of estimate.outcomes) if (outcome.chance > best.chance) best = outcome;
    return best.value;
  }
  const { shape, low, high } = estimate;
  // Symmetric percentile bounds: the median of a normal lies half-way, a lognormal's half-way in logarithms.
  if (shape === "uniform" || shape === "normal") return (low + high) / 2;
  if (shape === "lognormal") return Math.sqrt(low * high);
  if (estimate.likely === undefined) throw new Error(`a ${shape} estimate without a likely value`);
  return estimate.likely;
}

/** One estimate of the plan under its key; `cut`: its values are cut at zero. */
export interface KeyedEstimate {
  key: string;
  estimate: Estimate;
  cut: boolean;
}

/** Every estimate that takes part in time and cost, by key. */
export function keyedEstimates(plan: Plan): Map<string, KeyedEstimate> {
  const all = new Map<string, KeyedEstimate>();
  const add = (key: string, estimate: Estimate | undefined, cut: boolean) => {
    if (estimate) all.set(key, { key, estimate, cut });
  };
  for (const task of plan.tasks) {
    add(`${task.id}:duration`, task.duration, true);
    add(`${task.id}:effort`, task.effort, true);
    add(`${task.id}:remaining`, task.remaining, true);
    add(`${task.id}:cost`, task.cost, true);
    add(`${task.id}:costPerDay`, task.costPerDay, true);
    for (const link of task.after) add(`${task.id}:lag:${link.task}:${link.link}`, link.lag, false);
  }
  for (const entry of [...plan.risks, ...plan.assumptions]) {
    entry.impacts.forEach((impact, index) => {
      add(`${entry.id}:${index}:delay`, impact.delay, false);
      add(`${entry.id}:${index}:factor`, impact.factor, true);
      add(`${entry.id}:${index}:wait`, impact.wait, true);
      add(`${entry.id}:${index}:cost`, impact.cost, false);
    });
    for (const response of entry.responses) add(`${response.id}:cost`, response.cost, true);
  }
  for (const overhead of plan.overheads) add(`${overhead.id}:perDay`, overhead.perDay, true);
  return all;
}

/** The value as written, cut at zero where the page cuts it. */
export function writtenAndCut({ estimate, cut }: KeyedEstimate): number {
  const value = writtenValue(estimate);
  return cut ? Math.max(0, value) : value;
}
