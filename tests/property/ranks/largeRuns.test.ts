import { compile, forecast, newTrials, planAsWritten, planFromData, runBlocks } from "@leeway/core";
import { forecastInParallel, type Pool } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildWorker } from "../../contract/parallel/support/buildWorker.ts";

// A run whose moments would take more than a quarter of a gigabyte keeps of them what percentiles are read from. The
// expectation is sorted out of the same blocks, computed in stretches whose moments are kept.

const iterations = 200_001;
const stretch = 64 * 1024;
const count = 80;
const document = {
  format: 1,
  title: "Embankment",
  start: "2027-03-01",
  iterations,
  commitment: { confidence: 0.7 },
  tasks: Array.from({ length: count }, (_, i) => ({
    id: `t${i}`,
    name: `Task ${i}`,
    duration: i % 7 === 3 ? 4 : [2, 4 + (i % 5), 12 + (i % 11)],
    ...(i > 0 ? { after: [`t${i - 1}`, ...(i > 9 ? [`t${i - 9}`] : [])].slice(i % 3 === 0 ? 1 : 0) } : {}),
  })),
};

let pool: Pool;
beforeAll(async () => {
  pool = nodePool(await buildWorker("packages/parallel/src/nodeWorker.ts"));
});
afterAll(() => pool.close());

describe("a run too large for its moments", () => {
  it("gives the percentiles of every task exactly, alone and shared out, and keeps no rows of them", async () => {
    const { plan } = planFromData(document);
    if (plan === undefined) throw new Error("The embankment is no plan.");
    const model = compile(plan);
    const asWritten = planAsWritten(model);
    const whole = newTrials(model, asWritten, {});
    expect([whole.starts.length, whole.finishes.length]).toEqual([0, 0]);

    const watched = [0, 3, 41, 79];
    const rows = watched.map(() => ({
      start: new Float64Array(iterations),
      finish: new Float64Array(iterations),
    }));
    const places = watched.map((i) => model.tasks.findIndex(({ id }) => id === `t${i}`));
    for (let first = 0; first < iterations; first += stretch) {
      const n = Math.min(stretch, iterations - first);
      const part = newTrials(model, asWritten, { iterations: n });
      expect(runBlocks(model, asWritten, part, first / 1024, () => {})).toBe(-1);
      places.forEach((j, w) => {
        rows[w]?.start.set(part.starts[j] as Float64Array, first);
        rows[w]?.finish.set(part.finishes[j] as Float64Array, first);
      });
    }
    for (const { start, finish } of rows) {
      start.sort();
      finish.sort();
    }

    const alone = forecast(plan).forecast;
    places.forEach((j, w) => {
      const at = (row: Float64Array | undefined, p: number) => row?.[Math.ceil(p * iterations - 1e-9) - 1];
      const task = alone?.tasks[j];
      const { start, finish } = rows[w] ?? {};
      expect(task?.start).toEqual({ p10: at(start, 0.1), p50: at(start, 0.5), p90: at(start, 0.9) });
      expect(task?.finish).toEqual({ p10: at(finish, 0.1), p50: at(finish, 0.5), p90: at(finish, 0.9) });
    });
    const text = JSON.stringify(alone);
    for (const options of [
      { workers: 1, workPerThread: 0 },
      { workers: 3, workPerThread: 0 },
      { together: true },
    ]) {
      const found = await forecastInParallel(plan, { ...options, pool, aside: true });
      expect(JSON.stringify(found.forecast) === text, JSON.stringify(options)).toBe(true);
    }
  }, 120_000);
});
