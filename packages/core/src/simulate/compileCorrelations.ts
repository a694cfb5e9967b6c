import type { Plan } from "../plan/types.ts";
import { factorCorrelation, nearestCorrelation } from "../sampling/index.ts";
import type { Model, Slot } from "./model.ts";

/**
 * All correlation sets as one matrix in id order, repaired to the nearest correlation matrix where it is not
 * positive semi-definite (Higham 2002), then without the members that are certain, then factored.
 */
export function compileCorrelations(
  plan: Plan,
  slots: readonly Slot[],
  warnings: string[],
): Model["correlated"] {
  if (plan.correlations.length === 0) return undefined;
  // In the order of the ids the draws are addressed by, so that renaming (`was`) disturbs none.
  const drawIds = new Map(plan.tasks.map((task) => [task.id, task.was ?? task.id]));
  const drawName = (name: string) =>
    name.startsWith("cost:") ? `cost:${drawIds.get(name.slice(5)) ?? name}` : (drawIds.get(name) ?? name);
  const names = [...new Set(plan.correlations.flatMap((set) => set.between))].sort((a, b) =>
    drawName(a) < drawName(b) ? -1 : 1,
  );
  const size = names.length;
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) matrix[i * size + i] = 1;
  for (const set of plan.correlations) {
    for (const a of set.between) {
      for (const b of set.between) {
        if (a !== b) matrix[names.indexOf(a) * size + names.indexOf(b)] = set.coefficient;
      }
    }
  }
  const repaired = nearestCorrelation(matrix, size);
  if (repaired.largest > 1e-9) {
    warnings.push(
      `The correlations contradict each other; the nearest possible set is used (largest change of a coefficient ${repaired.largest.toFixed(3)}). Lower the coefficients, or name fewer pairs.`,
    );
  }
  const slotOf = (name: string) => {
    const id = name.startsWith("cost:") ? name.slice(5) : name;
    const keys = name.startsWith("cost:") ? [`${id}:cost`] : [`${id}:duration`, `${id}:effort`];
    return slots.findIndex((slot) => keys.includes(slot.key));
  };
  const kept = names.map((name, at) => ({ at, slot: slotOf(name) })).filter((member) => member.slot >= 0);
  if (kept.length < 2) return undefined;
  const n = kept.length;
  const among = new Float64Array(n * n);
  kept.forEach((a, i) => {
    kept.forEach((b, j) => {
      among[i * n + j] = repaired.matrix[a.at * size + b.at] as number;
    });
  });
  return { slots: Int32Array.from(kept, (member) => member.slot), factor: factorCorrelation(among, n) };
}
