import { compile, forecast, leaveTrials, type Plan, planFromData, simulate } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { leaveMemory, loadKernel } from "../../../packages/core/src/kernel/index.ts";
import { kernelOf } from "../../../packages/core/src/simulate/trials.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

// Memory that one simulation leaves to the next: every row is 0 when it is handed out, and no figure knows of it.

function planOf(seed: number): Plan {
  const { plan } = planFromData(randomPlanDocument(seededRng(seed)));
  if (plan === undefined) throw new Error(`Seed ${seed} makes no plan.`);
  return plan;
}

/** Leaves memory of at least so many bytes in which every byte is 255, as far as it was handed out. */
function leaveDirty(bytes: number): ArrayBuffer {
  const kernel = loadKernel(bytes);
  if (kernel === undefined) throw new Error("No WebAssembly.");
  const [all] = kernel.arena.bytes(1, kernel.arena.room - 128) as [Uint8Array];
  all.fill(255);
  leaveMemory(kernel);
  return kernel.arena.buffer;
}

describe("memory that was left", () => {
  it("is taken by the next kernel that needs about as much, and is 0 wherever it is handed out", () => {
    const buffer = leaveDirty(1_000_000);
    const kernel = loadKernel(900_000);
    expect(kernel?.arena.buffer).toBe(buffer);
    const rows = [
      ...(kernel?.arena.rows(3, 1000) ?? []),
      ...(kernel?.arena.bytes(3, 999) ?? []),
      ...(kernel?.arena.int32(2, 77) ?? []),
    ];
    expect(rows).toHaveLength(8);
    for (const row of rows) expect(row.every((entry) => entry === 0)).toBe(true);
    // Taken once.
    expect(loadKernel(900_000)?.arena.buffer).not.toBe(buffer);
  });

  it("is not taken where it is too small, or far too large", () => {
    const small = leaveDirty(100_000);
    expect(loadKernel(900_000)?.arena.buffer).not.toBe(small);
    const large = leaveDirty(9_000_000);
    expect(loadKernel(900_000)?.arena.buffer).not.toBe(large);
    expect(loadKernel(8_000_000)?.arena.buffer).toBe(large);
  });

  it("changes no figure of a forecast", () => {
    let reused = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const plan = planOf(seed);
      const options = { iterations: 1500 };
      // Memory that nobody left: what the forecast before gave back is taken first.
      loadKernel(4_000_000);
      const fresh = forecast(plan, options);
      const { trials } = simulate(compile(plan), options);
      const memory = trials && kernelOf(trials.finishes[0])?.arena.buffer;
      if (trials === undefined || memory === undefined) continue;
      new Uint8Array(memory).fill(255, 65_536);
      leaveTrials(trials);
      const again = forecast(plan, options);
      expect(again, `seed ${seed}`).toEqual(fresh);
      const { trials: next } = simulate(compile(plan), options);
      if (next !== undefined && kernelOf(next.finishes[0])?.arena.buffer === memory) reused++;
    }
    expect(reused).toBeGreaterThan(10);
  });
});
