import type { Future } from "@leeway/core";

/**
 * Names of the risks and assumptions that touched each task in this future, by task id: those that occurred and drew
 * a delay, a factor or a wait for it.
 */
export function eventsByTask({ events, draws }: Future): Map<string, string[]> {
  const occurred = new Map(events.filter((event) => event.occurred).map((event) => [event.id, event.name]));
  const touched = new Map<string, string[]>();
  for (const { of, on = [], counts } of draws) {
    const name = occurred.get(of.id);
    if (name === undefined || !counts) continue;
    for (const { id } of on) {
      const names = touched.get(id) ?? [];
      if (!names.includes(name)) names.push(name);
      touched.set(id, names);
    }
  }
  return touched;
}
