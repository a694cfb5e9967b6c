import type { Correlation, Task } from "../../../plan/types.ts";
import type { Pair } from "../changes/pair.ts";
import { pairsOf } from "../changes/pairsOf.ts";
import { places } from "../changes/places.ts";
import type { Choice } from "./hybridPlan.ts";

/**
 * The correlations of a hybrid, pair by pair, between draws that the hybrid has: a pair with a task that only one
 * of the plans has goes with that task.
 */
export function hybridCorrelations(pair: Pair, isNew: Choice, tasks: readonly Task[]): Correlation[] {
  const { older, newer } = pair;
  if (older.plan.correlations.length === 0 && newer.plan.correlations.length === 0) return [];
  const names = new Set(tasks.flatMap(drawnNames));
  const was = pairsOf(older.plan);
  const is = pairsOf(newer.plan);
  const inBoth = (name: string) => older.tasks.has(taskOf(name)) && newer.tasks.has(taskOf(name));
  const useNew = isNew(places.correlations);
  return [...new Set([...was.keys(), ...is.keys()])].sort().flatMap((key): Correlation[] => {
    const between = key.split(" ");
    if (!between.every((name) => names.has(name))) return [];
    const coefficient = between.every(inBoth) ? (useNew ? is : was).get(key) : (is.get(key) ?? was.get(key));
    return coefficient === undefined ? [] : [{ between, coefficient }];
  });
}

function taskOf(name: string): string {
  return name.startsWith("cost:") ? name.slice(5) : name;
}

function drawnNames({ id, milestone, cost }: Task): string[] {
  return [...(milestone === false ? [id] : []), ...(cost === undefined ? [] : [`cost:${id}`])];
}
