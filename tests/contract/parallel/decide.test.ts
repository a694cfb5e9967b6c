// However many threads, the same answer: what `responses` and `reach` give on one thread is the expectation.
import { planFromData, reach, responses } from "@leeway/core";
import { type Pool, reachInParallel, responsesInParallel } from "@leeway/parallel";
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

/** Seven responses, scope that may be dropped and capacity that could be added. */
const decided = (() => {
  const { plan, problems } = planFromData({
    format: 1,
    title: "Pier",
    start: "2027-03-01",
    commitment: { finishBy: "2027-05-14", budget: 9000 },
    lateness: { perWeek: 300 },
    purpose: { scope: { in: [{ id: "rail", name: "Rail", optional: true }] } },
    people: [{ id: "ada", name: "Ada", couldAdd: { capacity: 0.5, cost: 400, from: "2027-04-01" } }],
    tasks: Array.from({ length: 8 }, (_, k) => ({
      id: `t${k}`,
      name: `T${k}`,
      duration: [4, 6, 11],
      cost: 900,
      people: { id: "ada", share: 0.5 },
      ...(k < 2 ? {} : { after: `t${k - 2}` }),
      ...(k === 5 ? { scope: "rail" } : {}),
    })),
    risks: Array.from({ length: 7 }, (_, k) => ({
      id: `r${k}`,
      name: `R${k}`,
      probability: 0.3,
      impacts: { tasks: `t${k}`, delay: [2, 4, 9] },
      responses: { id: `x${k}`, action: `X${k}`, cost: 100 + 30 * k, probability: 0.05 },
    })),
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
})();

describe("responsesInParallel(plan)", () => {
  it.each([
    ["as it is", {}],
    [
      "with a sum, at another level, seed and design",
      { sum: 400, confidence: 0.6, seed: "other", design: "plain" },
    ],
    ["with something decided beforehand", { sum: 300, with: ["x1", "ada"], without: ["r3", "rail"] }],
  ] as const)("equals responses(plan) %s, to the bit", async (_, options) => {
    const run = { iterations: 1500, ...options };
    const alone = JSON.stringify(responses(decided, run));
    for (const workers of [1, 2, 3]) {
      expect(JSON.stringify(await responsesInParallel(decided, { ...run, ...shared(workers) }))).toBe(alone);
    }
  });

  it("hands problems of the call and of the calendar on", async () => {
    expect(await responsesInParallel(fullPlan, { sum: -1, ...shared(2) })).toEqual(
      responses(fullPlan, { sum: -1 }),
    );
    const late = { iterations: 20_000 };
    const { responses: found, problems } = await responsesInParallel(beyondPlan, { ...late, ...shared(2) });
    expect(found).toBeUndefined();
    expect(problems.map(({ code }) => code)).toEqual(["beyond-calendar"]);
  });
});

describe("reachInParallel(plan)", () => {
  it.each([{}, { finishBy: "2027-04-14" }, { sum: 7300, confidence: 0.6 }])(
    "equals reach(plan, %o), to the bit",
    async (options) => {
      const run = { iterations: 1500, ...options };
      const alone = reach(decided, run);
      expect(alone.reach?.how.tried).toBeGreaterThan("finishBy" in options ? 500 : 0);
      for (const workers of [1, 2, 3]) {
        const together = await reachInParallel(decided, { ...run, ...shared(workers) });
        expect(JSON.stringify(together)).toBe(JSON.stringify(alone));
      }
    },
  );

  it("tells how far it is, never back and to the end", async () => {
    const told: number[] = [];
    await reachInParallel(decided, {
      iterations: 1500,
      finishBy: "2027-04-01",
      ...shared(2),
      onProgress: (done, total) => told.push(done / total),
    });
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBe(1);
  });

  it("rejects with the signal's reason", async () => {
    const reason = new Error("enough");
    const control = new AbortController();
    const running = reachInParallel(decided, {
      iterations: 20_000,
      finishBy: "2027-04-01",
      ...shared(2),
      signal: control.signal,
    });
    control.abort(reason);
    await expect(running).rejects.toBe(reason);
  });
});
