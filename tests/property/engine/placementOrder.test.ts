// The order of placement against its definition in the plan format ("People"), applied naively: of the tasks whose
// predecessors are placed, the highest priority, then the longest tail, then the least id.
import { describe, expect, it } from "vitest";
import { type OrderTask, placementOrder } from "../../../packages/core/src/network/placementOrder.ts";
import { seededRng } from "../../oracle/seededRng.ts";

const pick = (rng: () => number, n: number) => Math.floor(rng() * n);

function randomTasks(rng: () => number): OrderTask[] {
  const m = 1 + pick(rng, 30);
  const priorities = 1 + pick(rng, 2) * 3; // half of the lists have one priority
  const facts = rng() < 0.3;
  return Array.from({ length: m }, (_, i) => ({
    id: `t${String(i).padStart(2, "0")}`,
    priority: pick(rng, priorities),
    duration: pick(rng, 5) / 4, // many ties
    placed: facts && rng() < 0.2,
    after: Array.from({ length: i === 0 ? 0 : pick(rng, 3) }, () => ({
      task: pick(rng, i),
      kind: "finish-to-start" as const,
      lag: pick(rng, 3) - 0.5,
    })),
  }));
}

/** The longest chain from its start to the end, in millionths of a day. */
function tailOf(tasks: readonly OrderTask[], i: number): number {
  const longest = (j: number): number =>
    tasks.reduce(
      (most, { after }, k) => {
        const through = after
          .filter((link) => link.task === j)
          .map((link) => (tasks[j] as OrderTask).duration + link.lag + longest(k));
        return Math.max(most, ...through);
      },
      (tasks[j] as OrderTask).duration,
    );
  return Math.round(longest(i) * 1e6);
}

function naive(tasks: readonly OrderTask[]): number[] {
  const tails = tasks.map((_, i) => tailOf(tasks, i));
  const left = new Set(tasks.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const ready = [...left].filter((i) => {
      const { placed, after } = tasks[i] as OrderTask;
      return placed || after.every(({ task }) => !left.has(task));
    });
    ready.sort((a, b) => {
      const x = tasks[a] as OrderTask;
      const y = tasks[b] as OrderTask;
      return (
        Number(y.placed) - Number(x.placed) ||
        y.priority - x.priority ||
        (tails[b] as number) - (tails[a] as number) ||
        (x.id < y.id ? -1 : 1)
      );
    });
    const next = ready[0] as number;
    order.push(next);
    left.delete(next);
  }
  return order;
}

describe("placementOrder", () => {
  it("is the order that the format defines", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const tasks = randomTasks(seededRng(seed));
      expect([...placementOrder(tasks)], `seed ${seed}`).toEqual(naive(tasks));
    }
  });
});
