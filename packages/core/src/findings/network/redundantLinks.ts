import type { Plan } from "../../plan/types.ts";
import { linksOf, type PlacedLink } from "./links.ts";

/**
 * Links from a finish to a start without a lag that other such links imply: a before c, where a is before b and b
 * before c. Bit sets of what comes before each task, so a plan of n tasks and m links costs n m / 32 steps.
 */
export function redundantLinks(plan: Plan): { redundant: PlacedLink; over: string }[] {
  const index = new Map(plan.tasks.map(({ id }, at) => [id, at]));
  const plain = linksOf(plan).filter(({ link }) => link.link === "finish-to-start" && isNone(link.lag));
  const before: PlacedLink[][] = plan.tasks.map(() => []);
  for (const each of plain) before[index.get(each.task.id) ?? 0]?.push(each);
  const ahead = aheadOf(before, (id) => index.get(id) ?? 0);
  return plain.flatMap((redundant) => {
    const from = index.get(redundant.link.task) ?? 0;
    const over = before[index.get(redundant.task.id) ?? 0]?.find(
      ({ link }) => link.task !== redundant.link.task && has(ahead[index.get(link.task) ?? 0], from),
    );
    return over === undefined ? [] : [{ redundant, over: over.link.task }];
  });
}

function isNone(lag: PlacedLink["link"]["lag"]): boolean {
  return lag.kind === "fixed" && lag.value === 0;
}

function has(set: Uint32Array | undefined, at: number): boolean {
  return set !== undefined && (((set[at >>> 5] as number) >>> (at & 31)) & 1) === 1;
}

/** By task, the set of tasks ahead of it; an explicit stack, for chains of thousands. */
function aheadOf(before: readonly PlacedLink[][], at: (id: string) => number): (Uint32Array | undefined)[] {
  const words = (before.length + 31) >>> 5;
  const sets: (Uint32Array | undefined)[] = before.map(() => undefined);
  for (let first = 0; first < before.length; first++) {
    const stack = [first];
    while (stack.length > 0) {
      const j = stack.at(-1) as number;
      const predecessors = (before[j] ?? []).map(({ link }) => at(link.task));
      const missing = sets[j] === undefined ? predecessors.filter((i) => sets[i] === undefined) : [];
      if (missing.length > 0) {
        stack.push(...missing);
        continue;
      }
      stack.pop();
      if (sets[j] !== undefined) continue;
      const set = new Uint32Array(words);
      for (const i of predecessors) {
        set[i >>> 5] = (set[i >>> 5] as number) | (1 << (i & 31));
        sets[i]?.forEach((word, w) => {
          set[w] = (set[w] as number) | word;
        });
      }
      sets[j] = set;
    }
  }
  return sets;
}
