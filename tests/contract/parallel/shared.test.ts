// Threads that share one memory and carry out a program: what `simulate` and `forecast` give on one thread is the
// expectation, to the bit, however many helpers there are and whether they come in time or not.
import {
  canBeShared,
  compile,
  forecast,
  planAsWritten,
  planFromData,
  simulate,
  taskRanks,
} from "@leeway/core";
import { forecastInParallel, type Pool } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { simulateShared } from "../../../packages/parallel/src/simulateShared.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { documentOf } from "../../property/engine/programPlans.ts";
import { buildWorker } from "./support/buildWorker.ts";
import { digest } from "./support/digest.ts";
import { beyondPlan, chainedPlan } from "./support/plans.ts";

let pool: Pool;
beforeAll(async () => {
  pool = nodePool(await buildWorker("packages/parallel/src/nodeWorker.ts"));
});
afterAll(() => pool.close());

describe("simulateShared", () => {
  it("equals simulate(model) on random plans, with 0, 1, 2 and 7 helpers", async () => {
    let tried = 0;
    for (let seed = 1; seed <= 400 && tried < 24; seed++) {
      const { plan } = planFromData(documentOf(seededRng(seed)));
      if (plan === undefined) throw new Error(`Seed ${seed} makes no plan.`);
      const model = compile(plan);
      const iterations = [256, 1029, 5000, 12_289][seed % 4] as number;
      if (!canBeShared(model, { iterations })) continue;
      tried++;
      const alone = simulate(model, { iterations });
      const asWritten = planAsWritten(model);
      const { trials } = alone;
      if (trials === undefined) throw new Error(`Seed ${seed} runs past its calendar.`);
      for (const helpers of [0, 1, 2, 7]) {
        const shared = await simulateShared(pool, helpers, model, () => asWritten, {
          iterations,
        });
        const found = shared?.simulation.trials;
        const { finish, finishDay, cost, finishes, sums } = trials;
        const ranks = await shared?.ranks();
        expect(digest({ ...found, starts: [], ranks }), `seed ${seed}, ${helpers} helpers`).toEqual(
          digest({
            ...trials,
            ...{ finish, finishDay, cost, finishes, sums },
            starts: [],
            ranks: taskRanks({ model, asWritten, trials }, model.confidence, 0, model.tasks.length),
          }),
        );
      }
    }
    expect(tried).toBe(24);
  });

  it("seeds as one thread does: with a text too long for the kernel, and a block past the hundredth", async () => {
    for (const options of [
      { iterations: 300, seed: "x".repeat(6000) },
      { iterations: 1024 * 101, seed: "many" },
    ]) {
      const model = compile(chainedPlan(3));
      const { trials } = simulate(model, options);
      const shared = await simulateShared(pool, 1, model, () => planAsWritten(model), options);
      const found = shared?.simulation.trials;
      await shared?.ranks();
      expect(digest({ finish: found?.finish, cost: found?.cost, sums: found?.sums })).toEqual(
        digest({ finish: trials?.finish, cost: trials?.cost, sums: trials?.sums }),
      );
      expect(found?.finish).toHaveLength(options.iterations);
    }
  });

  it("names the task one thread would have met first", async () => {
    const model = compile(beyondPlan);
    const options = { iterations: 20_000, seed: "late" };
    const alone = simulate(model, options);
    expect(alone.problems).toHaveLength(1);
    expect(canBeShared(model, options)).toBe(true);
    for (const helpers of [0, 1, 3]) {
      const shared = await simulateShared(pool, helpers, model, () => planAsWritten(model), options);
      expect(shared?.simulation.problems).toEqual(alone.problems);
      expect(shared?.simulation.trials).toBeUndefined();
    }
  });

  it("rejects with the signal's reason", async () => {
    const model = compile(chainedPlan(40));
    const reason = new Error("enough");
    const options = { iterations: 5000, signal: AbortSignal.abort(reason) };
    await expect(simulateShared(pool, 1, model, () => planAsWritten(model), options)).rejects.toBe(reason);
  });
});

describe("forecastInParallel(plan) of a large plan", () => {
  it("is forecast(plan), helpers there already or not", async () => {
    const plan = chainedPlan(110);
    const options = { iterations: 9500, confidence: 0.7 };
    const { forecast: alone } = forecast(plan, options);
    pool.prepare(2);
    for (const workers of [1, 2, 3]) {
      const { forecast: found } = await forecastInParallel(plan, { ...options, pool, workers });
      expect(found).toEqual(alone);
    }
  });
});
