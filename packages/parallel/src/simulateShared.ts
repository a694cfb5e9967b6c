import {
  type AsWritten,
  beyondCalendar,
  type Model,
  type SharedRun,
  type SimulateOptions,
  type Simulation,
  sharedRanks,
  shareForecast,
} from "@leeway/core";
import type { Helper } from "./helper.ts";
import type { Pool } from "./pool.ts";

/** A simulation that helpers work on, up to the percentiles of its tasks. */
export interface Shared {
  simulation: Simulation;
  /** Of all tasks, as a summary takes them; gives the helpers back. To be asked once. */
  ranks(): Promise<Float64Array | undefined>;
}

/** Milliseconds after which the caller, waiting for a helper, looks whether it is still there. */
const patience = 20;

/**
 * Simulates on the caller's thread and on helpers that need not know the plan, in one memory (`shareForecast`): the same
 * result, to the bit, as alone. Helpers that come late find less to do.
 *
 * @param computeAsWritten  Called once helpers have something to do.
 *
 * Returns undefined where memory cannot be shared. Rejects with the signal's reason when aborted, and with the error of a
 * helper that was lost while it worked.
 */
export async function simulateShared(
  pool: Pool,
  helpers: number,
  model: Model,
  computeAsWritten: () => AsWritten,
  options: SimulateOptions & { signal?: AbortSignal },
): Promise<Shared | undefined> {
  options.signal?.throwIfAborted();
  let crew: readonly Helper[] = [];
  let answers: readonly Promise<void>[] = [];
  let lost: unknown;
  const run = shareForecast(model, options, helpers + 1, (entry) => {
    crew = pool.take(helpers);
    answers = crew.map((helper) =>
      helper.ask({ kind: "assist", entry }).then(
        () => {},
        (error: unknown) => {
          lost ??= error;
        },
      ),
    );
  });
  if (run === undefined) return undefined;
  const release = (): void => {
    run.close();
    giveBack(pool, crew, answers);
  };
  const stage = async (name: "tables" | "blocks" | "ranks"): Promise<void> => {
    run.drain(name);
    while (!run.done(name)) {
      run.wait(name, patience);
      if (run.done(name)) break;
      // Whether a helper was lost is told by events.
      await new Promise((resolve) => setTimeout(resolve, 0));
      options.signal?.throwIfAborted();
      if (lost !== undefined) throw lost;
    }
    options.signal?.throwIfAborted();
  };
  const beyond = (task: number): Shared => {
    release();
    return { simulation: { problems: [beyondCalendar(model, task)] }, ranks: async () => undefined };
  };
  try {
    const asWritten = computeAsWritten(); // while the helpers begin
    if (asWritten.beyond >= 0) return beyond(asWritten.beyond);
    run.write(asWritten);
    await stage("tables");
    await stage("blocks");
    const { iterations } = run.trials;
    options.onProgress?.(iterations, iterations);
    const late = run.read();
    if (late !== undefined) return beyond(late);
    run.sum(asWritten);
    return {
      simulation: { trials: run.trials, asWritten, problems: [] },
      ranks: () => readRanks(run, stage, release, model, options),
    };
  } catch (error) {
    run.close();
    await Promise.all(crew.map((helper) => helper.end()));
    throw error;
  }
}

async function readRanks(
  run: SharedRun,
  stage: (name: "ranks") => Promise<void>,
  release: () => void,
  model: Model,
  options: SimulateOptions,
): Promise<Float64Array> {
  await stage("ranks");
  release();
  return sharedRanks(run, run.trials, options.confidence ?? model.confidence);
}

/** Those who still start find nothing to do and then rest; nobody waits for them. */
function giveBack(pool: Pool, crew: readonly Helper[], answers: readonly Promise<void>[]): void {
  for (const helper of crew) helper.rest(true);
  void Promise.all(answers).then(() => pool.giveBack(crew));
}
