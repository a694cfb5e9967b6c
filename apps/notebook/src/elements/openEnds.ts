import type { Finding } from "@leeway/core";

/**
 * What is worth a look at a task's own row, by its id: that nothing waits for it, or that it hangs together with nothing.
 * That it only waits for nothing is no more than a question: some task begins. What somebody accepted is left out.
 */
export function openEnds(findings: readonly Finding[] | undefined): ReadonlyMap<string, string> {
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
        : "Nothing waits for it: if it is late, nothing moves.",
    ]),
  );
}

/** Whether they say something else: a long table is not drawn anew for what it says already. */
export function saysOther(one: ReadonlyMap<string, string>, other?: ReadonlyMap<string, string>): boolean {
  return one.size !== other?.size || [...one].some(([id, words]) => other.get(id) !== words);
}
