import type { Finding, Plan, Task } from "@leeway/core";

/**
 * What is worth a look at a task's own row, by its id: that nothing waits for it, or that it hangs together with nothing.
 * That it only waits for nothing is no more than a question: some task begins. What somebody accepted is left out.
 *
 * Where the finish of the whole plan is promised, that waits for every task: late enough, each of them moves it.
 */
export function openEnds(
  findings: readonly Finding[] | undefined,
  plan: Plan | undefined,
): ReadonlyMap<string, string> {
  const moves = plan?.commitment.finishOf === undefined;
  const of = (code: string): Set<string> =>
    new Set(
      (findings ?? [])
        .filter((one) => one.code === code && one.accepted === undefined)
        .flatMap(({ ids }) => ids.slice(0, 1)),
    );
  const starts = of("open-start");
  return new Map(
    [...of("open-end")].map((id) => [
      id,
      starts.has(id)
        ? "It waits for nothing and nothing waits for it."
        : moves
          ? "Nothing waits for it; the finish of the plan does."
          : "Nothing waits for it: if it is late, nothing moves.",
    ]),
  );
}

/**
 * What a task that nothing waits for may have been meant to come before: whose finish is promised, or else the one
 * milestone that the plan ends in. It can wait for any such task without a circle, as nothing comes after it.
 */
export function closesPlan({ tasks, commitment }: Plan): Task | undefined {
  if (commitment.finishOf !== undefined) return tasks.find(({ id }) => id === commitment.finishOf);
  const awaited = new Set(tasks.flatMap(({ after }) => after.map(({ task }) => task)));
  const last = tasks.filter(({ id, milestone }) => milestone !== false && !awaited.has(id));
  return last.length === 1 ? last[0] : undefined;
}

/** Whether they say something else: a long table is not drawn anew for what it says already. */
export function saysOther(one: ReadonlyMap<string, string>, other?: ReadonlyMap<string, string>): boolean {
  return one.size !== other?.size || [...one].some(([id, words]) => other.get(id) !== words);
}
