// What becomes of the threads: stopped at once, reported whole, done without.
import { compile, simulate } from "@leeway/core";
import {
  createPool,
  type FromThread,
  forecastInParallel,
  type Pool,
  serve,
  simulateInParallel,
} from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { beforeAll, describe, expect, it } from "vitest";
import { buildWorker } from "./support/buildWorker.ts";
import { digest } from "./support/digest.ts";
import { chainedPlan, fullPlan } from "./support/plans.ts";

let worker: URL;
let throwing: URL;
beforeAll(async () => {
  worker = await buildWorker("packages/parallel/src/nodeWorker.ts");
  throwing = await buildWorker("tests/contract/parallel/support/throwingWorker.ts");
});

const shared = (pool: Pool, workers = 2) => ({ workers, pool, workPerThread: 0 });
/** Threads that keep the program running, seen by the message port each of them holds open. */
const threads = () => process.getActiveResourcesInfo().filter((name) => name === "MessagePort").length;
const alone = digest(simulate(compile(fullPlan), { iterations: 5000 }));
const long = chainedPlan(200);

describe("stopping", () => {
  it("rejects with the signal's reason, leaves no thread, and the pool serves again", async () => {
    const pool = nodePool(worker);
    const before = threads();
    const controller = new AbortController();
    let seen = 0;
    let asked = Number.POSITIVE_INFINITY;
    const run = simulateInParallel(long, {
      ...shared(pool),
      iterations: 200_000,
      signal: controller.signal,
      onProgress: (done) => {
        seen = done;
        expect(threads() - before).toBe(2);
        asked = performance.now();
        controller.abort();
      },
    });
    await expect(run).rejects.toMatchObject({ name: "AbortError" });
    expect(performance.now() - asked).toBeLessThan(10_000);
    expect(threads() - before).toBe(0);
    expect(seen).toBeLessThan(200_000);
    expect(digest(await simulateInParallel(fullPlan, { ...shared(pool), iterations: 5000 }))).toEqual(alone);
    await pool.close();
    expect(threads() - before).toBe(0);
  });

  it("stops a tornado too", async () => {
    const pool = nodePool(worker);
    const before = threads();
    const controller = new AbortController();
    let passes = 0;
    const run = forecastInParallel(long, {
      ...shared(pool),
      tornado: true,
      iterations: 3000,
      signal: controller.signal,
      onProgress: (done, total) => {
        if (passes > 0 && done < total) controller.abort(new Error("enough"));
        if (done === total) passes++;
      },
    });
    await expect(run).rejects.toThrow("enough");
    expect(threads() - before).toBe(0);
  });

  it("starts nothing when the signal came first", async () => {
    const pool = createPool(() => {
      throw new Error("a thread was started");
    }, 2);
    const run = simulateInParallel(fullPlan, { ...shared(pool), signal: AbortSignal.abort() });
    await expect(run).rejects.toMatchObject({ name: "AbortError" });
  });
});

describe("a thread that breaks", () => {
  it("rejects with its error, message and stack, and leaves no thread", async () => {
    const pool = nodePool(throwing);
    const before = threads();
    const failed = await simulateInParallel(fullPlan, shared(pool)).catch((error: unknown) => error);
    expect(failed).toMatchObject({ name: "RangeError", message: "the floor gave way" });
    expect(failed).toHaveProperty("stack", expect.stringContaining("worker.mjs"));
    expect(threads() - before).toBe(0);
  });

  it("answers what went wrong while it computed", async () => {
    // Here, without a thread: nobody tells it the plan.
    const pool = createPool(({ message }) => {
      let take = (_: Parameters<ReturnType<typeof serve>>[0]): void => {};
      queueMicrotask(() => {
        take = serve((said: FromThread) => message(said));
      });
      return {
        post: (request) => (request.kind === "plan" ? undefined : take(request)),
        end: async () => {},
        rest: () => {},
      };
    }, 2);
    const failed = await simulateInParallel(fullPlan, shared(pool)).catch((error: unknown) => error);
    expect(failed).toMatchObject({ message: 'Asked for "stretch" before any plan.' });
    expect(failed).toHaveProperty("stack", expect.stringContaining("serve.ts"));
  });
});

describe("without threads", () => {
  it.each([
    [
      "cannot be started",
      () =>
        createPool(() => {
          throw new Error("refused");
        }, 2),
    ],
    ["have no file", () => nodePool(new URL("./nowhere.mjs", worker))],
  ])("where they %s the caller's own does the work", async (_, pool) => {
    const before = threads();
    expect(digest(await simulateInParallel(fullPlan, { ...shared(pool()), iterations: 5000 }))).toEqual(
      alone,
    );
    expect(threads() - before).toBe(0);
  });

  it.each([
    ["small work", {}],
    ["one worker", { workers: 1, iterations: 5000, workPerThread: 1 }],
    ["less than a block", { workers: 2, iterations: 900, workPerThread: 1 }],
  ])("%s stays where it is", async (_, options) => {
    let started = 0;
    const pool = createPool(() => {
      started++;
      throw new Error("refused");
    }, 2);
    await simulateInParallel(fullPlan, { iterations: 2000, pool, ...options });
    expect(started).toBe(0);
  });

  it("large work leaves the caller's thread when asked to, even for one worker", async () => {
    let started = 0;
    const pool = createPool(() => {
      started++;
      throw new Error("refused");
    }, 2);
    const options = { iterations: 2000, pool, aside: true, workers: 1, workPerThread: 1000 };
    await simulateInParallel(fullPlan, options);
    expect(started).toBe(1);
  });
});

describe("onProgress", () => {
  it("that throws rejects with what it threw and leaves no thread", async () => {
    const before = threads();
    const run = simulateInParallel(long, {
      ...shared(nodePool(worker)),
      iterations: 60_000,
      onProgress: () => {
        throw new Error("seen enough");
      },
    });
    await expect(run).rejects.toThrow("seen enough");
    expect(threads() - before).toBe(0);
  });

  it.each([1, 2, 3])("never goes back and ends at the whole, %i threads", async (workers) => {
    const pool = nodePool(worker);
    const told: [number, number][] = [];
    const iterations = 60_000;
    await simulateInParallel(long, {
      ...shared(pool, workers),
      aside: true,
      iterations,
      onProgress: (done, total) => told.push([done, total]),
    });
    await pool.close();
    const done = told.map(([part]) => part);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(done.filter((part) => part === iterations)).toHaveLength(1);
    expect(done.length).toBeGreaterThan(2);
    expect(new Set(told.map(([, total]) => total))).toEqual(new Set([iterations]));
  });
});
