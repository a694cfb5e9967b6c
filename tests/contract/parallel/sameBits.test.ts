// However many threads, the same bits: what `simulate` and `forecast` give on one thread is the expectation.
import { compile, forecast, simulate } from "@leeway/core";
import { createPool, forecastInParallel, type Pool, simulateInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildWorker } from "./support/buildWorker.ts";
import { digest } from "./support/digest.ts";
import { beyondPlan, chainedPlan, fullPlan } from "./support/plans.ts";

let pool: Pool;
beforeAll(async () => {
  pool = nodePool(await buildWorker("packages/parallel/src/nodeWorker.ts"));
});
afterAll(() => pool.close());

/** Shares out everything, however small. */
const shared = (workers: number) => ({ workers, pool, workPerThread: 0, aside: true });
const counts = [1, 2, 3, 8];

describe("simulateInParallel(plan)", () => {
  it("is tried on a plan that leaves every kind of row and sum behind", () => {
    const { trials } = simulate(compile(fullPlan), { iterations: 2000 });
    const { worth, lateness, months, unlimited, intervals, sums } = trials ?? {};
    expect([worth, lateness, months, unlimited].map((rows) => typeof rows)).toEqual(Array(4).fill("object"));
    expect(intervals).toHaveLength(1);
    expect(Object.entries(sums ?? {}).filter(([, sum]) => sum.length === 0)).toEqual([
      ["responses", new Float64Array()],
    ]);
  });

  // Whole blocks of 1,024, a part of the last one, fewer blocks than threads, less than one block.
  it.each([10_000, 20_480, 1500, 700])("equals simulate(model) at %i iterations", async (iterations) => {
    const alone = digest(simulate(compile(fullPlan), { iterations }));
    for (const workers of counts) {
      const together = await simulateInParallel(fullPlan, { iterations, ...shared(workers) });
      expect(digest(together), `${workers} threads`).toEqual(alone);
    }
  });

  it.each(["latin-hypercube", "plain"] as const)("passes seed, months and design %s on", async (design) => {
    const plan = chainedPlan(40);
    const options = { seed: "other", design, months: true, iterations: 5000 };
    const together = await simulateInParallel(plan, { ...options, ...shared(3) });
    expect(digest(together)).toEqual(digest(simulate(compile(plan), options)));
  });

  // The chance that no seed of six runs past its calendar is below 1e-12: 20,000 iterations at 2 in 10,000 twice.
  it.each(["late", "a", "b", "c", "d", "e"])(
    "names the task one thread would have met first, seed %s",
    async (seed) => {
      const options = { iterations: 20_000, seed };
      const alone = simulate(compile(beyondPlan), options);
      expect(alone.problems.map(({ code }) => code)).toEqual(["beyond-calendar"]);
      for (const workers of counts) {
        expect(await simulateInParallel(beyondPlan, { ...options, ...shared(workers) })).toEqual(alone);
      }
    },
  );
});

describe("forecastInParallel(plan)", () => {
  it.each([
    ["as it is", {}],
    ["with its tornado", { tornado: true, iterations: 3000 }],
    ["with a response and without a risk", { with: ["dam"], confidence: 0.7 }],
    ["until the limits are close", { iterations: 1000, withinDays: 0.5 }],
  ])("equals forecast(plan) %s", async (_, options) => {
    const alone = JSON.stringify(forecast(fullPlan, options));
    for (const workers of counts) {
      const together = await forecastInParallel(fullPlan, { ...options, ...shared(workers) });
      expect(JSON.stringify(together) === alone, `${workers} threads`).toBe(true);
    }
  });

  it.each([
    ["as it is", {}],
    ["of few iterations", { iterations: 700 }],
    ["plain, with another seed", { iterations: 5000, design: "plain", seed: "other" }],
    ["with its tornado", { tornado: true, iterations: 3000, confidence: 0.7 }],
    ["until the limits are close", { iterations: 1000, withinDays: 0.5 }],
  ] as const)("equals forecast(plan) %s in shared memory", async (_, options) => {
    const alone = JSON.stringify(forecast(fullPlan, options));
    for (const workers of counts) {
      const found = await forecastInParallel(fullPlan, { ...options, workers, pool, together: true });
      expect(JSON.stringify(found) === alone, `${workers} threads`).toBe(true);
    }
  });

  it("names the task one thread would have met first, in shared memory too", async () => {
    for (const seed of ["late", "a", "b", "c"]) {
      const options = { iterations: 20_000, seed };
      const alone = forecast(beyondPlan, options);
      expect(alone.problems.map(({ code }) => code)).toEqual(["beyond-calendar"]);
      for (const workers of counts) {
        expect(await forecastInParallel(beyondPlan, { ...options, workers, pool, together: true })).toEqual(
          alone,
        );
      }
    }
  });

  it("is not stopped by helpers that cannot be started", async () => {
    const nobody = createPool(
      () => {
        throw new Error("No threads here.");
      },
      4,
      true,
    );
    const found = await forecastInParallel(fullPlan, { iterations: 3000, pool: nobody, together: true });
    expect(JSON.stringify(found)).toBe(JSON.stringify(forecast(fullPlan, { iterations: 3000 })));
  });

  it("doubles the iterations as forecast(plan) does", async () => {
    const { forecast: found } = await forecastInParallel(fullPlan, {
      iterations: 1000,
      withinDays: 0.5,
      ...shared(2),
    });
    expect(found?.iterations).toBeGreaterThan(1000);
  });

  it("hands problems of the scenario and of the calendar on", async () => {
    const unknown = { without: ["nobody"] };
    expect(await forecastInParallel(fullPlan, { ...unknown, ...shared(2) })).toEqual(
      forecast(fullPlan, unknown),
    );
    const late = { iterations: 20_000, tornado: true };
    expect(await forecastInParallel(beyondPlan, { ...late, ...shared(2) })).toEqual(
      forecast(beyondPlan, late),
    );
  });

  it("says how long each step took, by the clock it is handed", async () => {
    let now = 0;
    const { timing } = await forecastInParallel(fullPlan, { clock: () => now++, ...shared(2) });
    expect(timing).toEqual({ compile: 1, simulate: 1, summarise: 1 });
  });
});
