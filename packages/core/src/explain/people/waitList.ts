import type { Model } from "../../simulate/model.ts";
import type { Wait } from "../types.ts";
import type { OnWait } from "./waits.ts";

interface Tally {
  task: number;
  person: number;
  behind: number;
  asWritten: number;
  sum: number;
  futures: number;
  last: number;
}

/** Adds up waits by task, person and the task in the way. */
export function waitList(model: Model): {
  asWritten: OnWait;
  inFuture: OnWait;
  /** Longest mean first, then as written, then by id. */
  list(iterations: number): Wait[];
} {
  const all = new Map<number, Tally>();
  const tallyOf = (task: number, person: number, behind: number): Tally => {
    const key = (task * model.people.length + person) * (model.tasks.length + 1) + behind + 1;
    const known = all.get(key);
    if (known !== undefined) return known;
    const made = { task, person, behind, asWritten: 0, sum: 0, futures: 0, last: -1 };
    all.set(key, made);
    return made;
  };
  const named = ({ id, name }: { id: string; name: string }) => ({ id, name });
  return {
    asWritten(task, person, behind, _k, days) {
      tallyOf(task, person, behind).asWritten += days;
    },
    inFuture(task, person, behind, k, days) {
      const tally = tallyOf(task, person, behind);
      tally.sum += days;
      if (tally.last === k) return;
      tally.last = k;
      tally.futures += 1;
    },
    list: (iterations) =>
      [...all.values()]
        .sort(
          (a, b) =>
            b.sum - a.sum ||
            b.asWritten - a.asWritten ||
            a.task - b.task ||
            a.person - b.person ||
            a.behind - b.behind,
        )
        .map((tally) => {
          const behind = model.tasks[tally.behind];
          return {
            task: named(model.tasks[tally.task] as Model["tasks"][number]),
            person: named(model.people[tally.person] as Model["people"][number]),
            ...(behind === undefined ? {} : { behind: named(behind) }),
            asWritten: tally.asWritten,
            mean: tally.sum / iterations,
            share: tally.futures / iterations,
          };
        }),
  };
}
