// Memory made ready by a thread that waits, before it is known how much a run will need.
import { dropSpare, forecast, spareMemory, touchMemory } from "@leeway/core";
import { forecastInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { describe, expect, it } from "vitest";
import { loadSharedKernel } from "../../../packages/core/src/kernel/index.ts";
import { buildWorker } from "./support/buildWorker.ts";
import { chainedPlan } from "./support/plans.ts";

describe("spareMemory", () => {
  it("is what the next shared kernel takes, once, with as much as it needs", () => {
    const spare = spareMemory(200_000);
    expect(loadSharedKernel(100_000)?.entry.memory).toBe(spare);
    expect(loadSharedKernel(100_000)?.entry.memory).not.toBe(spare);
    const small = spareMemory(100_000);
    const grown = loadSharedKernel(3_000_000);
    expect(grown?.entry.memory).toBe(small);
    expect(grown?.kernel.arena.rows(1, 370_000)[0]?.every((entry) => entry === 0)).toBe(true);
  });

  it("is not taken once it is dropped, and not touched any more", () => {
    const spare = spareMemory(1_000_000);
    if (spare === undefined) throw new Error("Memory cannot be shared here.");
    expect(dropSpare()).toBe(true);
    touchMemory(spare); // comes too late
    expect(loadSharedKernel(100_000)?.entry.memory).not.toBe(spare);
    expect(dropSpare()).toBe(true);
  });

  it("is 0 after it was touched", () => {
    const spare = spareMemory(1_000_000);
    if (spare === undefined) throw new Error("Memory cannot be shared here.");
    touchMemory(spare);
    expect(new Uint8Array(spare.buffer, 65_536).every((byte) => byte === 0)).toBe(true);
    expect(loadSharedKernel(100_000)?.entry.memory).toBe(spare);
  });
});

describe("forecastInParallel(plan) in memory made ready", () => {
  const worker = buildWorker("packages/parallel/src/nodeWorker.ts");

  it.each([
    ["too little", 100_000],
    ["about enough", 12_000_000],
    ["far too much, still being touched", 400_000_000],
  ])("is forecast(plan): %s", async (_, room) => {
    const plan = chainedPlan(110);
    const options = { iterations: 9500, confidence: 0.7 };
    const { forecast: alone } = forecast(plan, options);
    const pool = nodePool(await worker);
    for (let time = 0; time < 3; time++) {
      pool.prepare(2, room);
      // At once, and when the thread has begun.
      if (time > 0) await new Promise((resolve) => setTimeout(resolve, 60 * time));
      const { forecast: found } = await forecastInParallel(plan, { ...options, pool, workers: 3 });
      expect(found).toEqual(alone);
    }
    await pool.close();
  });

  it("does not keep it for a plan that is computed otherwise", async () => {
    const pool = nodePool(await worker);
    pool.prepare(1, 50_000_000);
    const small = chainedPlan(3);
    const { forecast: found } = await forecastInParallel(small, { iterations: 500, pool, workers: 2 });
    expect(found).toEqual(forecast(small, { iterations: 500 }).forecast);
    const spare = spareMemory(100_000);
    expect(loadSharedKernel(50_000)?.entry.memory).toBe(spare);
    await pool.close();
  });
});
