// However many threads, the same explanation: what `explain` gives on one thread is the expectation.
import { explain } from "@leeway/core";
import { explainInParallel, type Pool } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildWorker } from "./support/buildWorker.ts";
import { beyondPlan, fullPlan } from "./support/plans.ts";

let pool: Pool;
beforeAll(async () => {
  pool = nodePool(await buildWorker("packages/parallel/src/nodeWorker.ts"));
});
afterAll(() => pool.close());

/** Shares out everything, however small. */
const shared = (workers: number) => ({ workers, pool, workPerThread: 0, aside: true });

describe("explainInParallel(plan)", () => {
  it.each([
    ["as it is", {}],
    ["at another level, seed and design", { confidence: 0.6, seed: "other", design: "plain" as const }],
    ["with a response", { with: ["dam"] }],
  ])("equals explain(plan) %s, to the bit", async (_, options) => {
    const run = { iterations: 1500, ...options };
    const alone = explain(fullPlan, run);
    expect(alone.explanation?.shares.length).toBeGreaterThan(5);
    for (const workers of [1, 2, 3, 8]) {
      const together = await explainInParallel(fullPlan, { ...run, ...shared(workers) });
      expect(JSON.stringify(together) === JSON.stringify(alone), `${workers} threads`).toBe(true);
    }
  });

  it("hands problems of the scenario and of the calendar on", async () => {
    const unknown = { without: ["nobody"] };
    expect(await explainInParallel(fullPlan, { ...unknown, ...shared(2) })).toEqual(
      explain(fullPlan, unknown),
    );
    const late = { iterations: 20_000 };
    const { explanation, problems } = await explainInParallel(beyondPlan, { ...late, ...shared(2) });
    expect(explanation).toBeUndefined();
    expect(problems.map(({ code }) => code)).toEqual(["beyond-calendar"]);
  });

  it("tells how far it is, never back and to the end", async () => {
    const told: number[] = [];
    await explainInParallel(fullPlan, {
      iterations: 1500,
      ...shared(2),
      onProgress: (done, total) => told.push(done / total),
    });
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBe(1);
  });

  it("rejects with the signal's reason and leaves no thread at work", async () => {
    const reason = new Error("enough");
    const control = new AbortController();
    const running = explainInParallel(fullPlan, {
      iterations: 20_000,
      ...shared(2),
      signal: control.signal,
      onProgress: () => control.abort(reason),
    });
    await expect(running).rejects.toBe(reason);
  });
});
