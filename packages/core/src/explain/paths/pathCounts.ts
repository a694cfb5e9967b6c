import type { BoundKind } from "../types.ts";
import { chainTo, finishingTask } from "./drivingPath.ts";
import type { Placed } from "./placed.ts";

/** How a task on a path hangs on the one before it; of the first, what it stands on. `person`: index, or -1. */
export interface Way {
  kind: BoundKind;
  person: number;
}

/** One path by index, first task first, and in how many iterations it set the finish. */
export interface CountedPath {
  tasks: number[];
  ways: Way[];
  count: number;
}

/**
 * How often each path set the finish, by its text (see `textOf`): about 5 bytes a task of each different path, of which
 * there may be as many as iterations.
 */
export type PathCounts = Map<string, number>;

/**
 * Counts the driving path of every iteration of a placed and marked block. Tasks that are finished, or not needed in
 * an iteration, are no part of its path; two paths over the same tasks are two when they hang together differently (by
 * a link, by a person). Cost: the bounds of each task on a path, about 0.1 microseconds each.
 */
export function countPaths(placed: Placed, counts: PathCounts): void {
  for (let k = 0; k < placed.block.n; k++) {
    const text = textOf(pathOf(placed, k));
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
}

/** The driving path of iteration k, first task first; empty when nothing is needed or left to do. */
export function pathOf(placed: Placed, k: number): { tasks: number[]; ways: Way[] } {
  const last = finishingTask(placed, k);
  return last < 0 ? { tasks: [], ways: [] } : pathTo(placed, last, k);
}

/**
 * The chain that holds the start of task j in iteration k, first task first, without those that are finished or not
 * needed; `always`: j itself is in it whatever it is.
 */
export function pathTo(
  placed: Placed,
  j: number,
  k: number,
  always = false,
): { tasks: number[]; ways: Way[] } {
  const { model, block } = placed;
  const tasks: number[] = [];
  const ways: Way[] = [];
  for (const { task, by } of chainTo(placed, j, k)) {
    const kept = always && task === j;
    if (!kept && model.tasks[task]?.progress?.finished === true) continue;
    const person = by.kind === "person" || by.kind === "away" ? by.at : -1;
    if (!kept && block.needed[task]?.[k] === 0) {
      // Passed through: what hangs on it hangs on what it hangs on, by a link.
      const after = ways.at(-1);
      if (after !== undefined && by.from < 0) after.kind = by.kind;
      continue;
    }
    tasks.push(task);
    ways.push({ kind: by.kind, person });
  }
  return { tasks: tasks.reverse(), ways: ways.reverse() };
}

/** A path as text, for counting: `12,5:person:3` is task 12, then task 5, which waits for person 3. */
function textOf({ tasks, ways }: { tasks: number[]; ways: Way[] }): string {
  return tasks
    .map((task, at) => {
      const way = ways[at];
      return way === undefined || way.kind === "link" ? String(task) : `${task}:${way.kind}:${way.person}`;
    })
    .join();
}

function pathFrom(text: string): { tasks: number[]; ways: Way[] } {
  const parts = text === "" ? [] : text.split(",").map((part) => part.split(":"));
  return {
    tasks: parts.map(([task]) => Number(task)),
    ways: parts.map(([, kind, person]) => ({
      kind: (kind ?? "link") as BoundKind, // written by textOf
      person: Number(person ?? -1),
    })),
  };
}

/** The most frequent paths, most frequent first; of equals the one whose text comes first. */
export function mostFrequent(counts: PathCounts, most: number): CountedPath[] {
  return [...counts]
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : a > b ? 1 : 0))
    .slice(0, most)
    .map(([text, count]) => ({ ...pathFrom(text), count }));
}
