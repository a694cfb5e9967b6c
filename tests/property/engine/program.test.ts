import { compile, type Model, planAsWritten, planFromData } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { blockRunner } from "../../../packages/core/src/simulate/blockRunner.ts";
import { followsProgram } from "../../../packages/core/src/simulate/program/followsProgram.ts";
import { addSums, newTrials, type Trials } from "../../../packages/core/src/simulate/trials.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { documentOf } from "./programPlans.ts";

// A block computed by a program in WebAssembly against the same block computed step by step in TypeScript: two
// implementations, the same bits in every row and sum. What the steps compute is held to the second implementation of
// the plan format in againstOracle.test.ts.

function run(model: Model, iterations: number, how: "quickest" | "step by step"): Trials {
  const asWritten = planAsWritten(model);
  const trials = newTrials(model, asWritten, { iterations }, "in kernel");
  const runner = blockRunner(model, asWritten, trials, undefined, how);
  for (let first = 0; first < iterations; first += 1024) {
    const sums = runner.run(first / 1024, first, Math.min(1024, iterations - first));
    if (typeof sums === "number") throw new Error(`Task ${sums} runs past its calendar.`);
    addSums(trials.sums, sums);
  }
  return trials;
}

function bits(trials: Trials): unknown {
  const { finish, finishDay, cost, starts, finishes, sums } = trials;
  const hex = (row: ArrayBufferView) =>
    Buffer.from(row.buffer, row.byteOffset, row.byteLength).toString("hex");
  return {
    finish: hex(finish),
    finishDay: hex(finishDay),
    cost: hex(cost),
    starts: starts.map(hex),
    finishes: finishes.map(hex),
    ...Object.fromEntries(Object.entries(sums).map(([name, row]) => [name, [...row]])),
  };
}

describe("a block by a program", () => {
  it("is the block step by step, to the bit", () => {
    let followed = 0;
    for (let seed = 1; seed <= 120; seed++) {
      const document = documentOf(seededRng(seed));
      const { plan, problems } = planFromData(document);
      if (plan === undefined)
        throw new Error(`Seed ${seed}: ${problems[0]?.received} ${problems[0]?.rule} ${problems[0]?.path}`);
      const model = compile(plan);
      if (followsProgram(model)) followed++;
      const iterations = [1, 5, 64, 1023, 1029, 2048][seed % 6] as number;
      expect(bits(run(model, iterations, "quickest")), `seed ${seed}`).toEqual(
        bits(run(model, iterations, "step by step")),
      );
    }
    // Plans with two factors on a task do not: the others have to.
    expect(followed).toBeGreaterThan(60);
  });
});
