import { tolerance } from "../../calendar/tolerance.ts";
import type { Block } from "../../simulate/block.ts";
import type { Model, ModelPerson, ModelTask } from "../../simulate/model.ts";

/** A share of a person that a placed task holds. */
export interface Holding {
  task: number;
  share: number;
}

/** Where room is made: the moment, and the task that ends there; -1: a partial absence ends. */
export interface Overload {
  end: number;
  behind: number;
}

interface Interval {
  from: number;
  to: number;
  share: number;
  behind: number;
}

/**
 * The first moment in [s, f) at which `hold` asks for more than its person has left, and when something held there
 * ends; undefined where it fits from s to f. Capacity is what `simulate` limits: a partial absence takes its part,
 * except from those who go along.
 */
export function overloadAt(
  model: Model,
  block: Block,
  hold: ModelTask["holds"][number],
  held: readonly Holding[],
  k: number,
  s: number,
  f: number,
): Overload | undefined {
  const person = model.people[hold.person] as ModelPerson;
  const inside: Interval[] = [];
  for (const { task, share } of held) {
    const from = (block.start[task] as Float64Array)[k] as number;
    const to = (block.finish[task] as Float64Array)[k] as number;
    if (from < f - tolerance && to > s + tolerance && to - from > tolerance) {
      inside.push({ from, to, share, behind: task });
    }
  }
  if (!hold.along) {
    for (const { from, to, gone } of person.partial) {
      if (from < f - tolerance && to > s + tolerance) inside.push({ from, to, share: gone, behind: -1 });
    }
  }
  const room = person.capacity - hold.share + tolerance;
  const moments = [s, ...inside.map(({ from }) => from).filter((from) => from > s)].sort((a, b) => a - b);
  for (const x of moments) {
    let sum = 0;
    let first: Interval | undefined;
    for (const each of inside) {
      if (each.from > x + tolerance || each.to <= x + tolerance) continue;
      sum += each.share;
      if (first === undefined || each.to < first.to) first = each;
    }
    if (sum > room && first !== undefined) return { end: first.to, behind: first.behind };
  }
  return undefined;
}
