import {
  addSums,
  beyondCalendar,
  blockSize,
  bytesOfTrials,
  newTrials,
  type SimulateOptions,
  type Simulation,
  type TrialSums,
  taskRanks,
} from "@leeway/core";
import type { Subject } from "./forecastInParallel.ts";
import type { Helper } from "./helper.ts";
import { type Taken, takeBlocks } from "./takeBlocks.ts";

/** A simulation that helpers took part in, and those of them that can be asked about it. */
export interface Together {
  simulation: Simulation;
  crew: Helper[];
}

/**
 * Simulates on the caller's thread and on helpers that know the plan, all writing into memory that they share: nothing is
 * handed over, and nobody waits for a helper that is still starting. The same result, to the bit, as alone.
 *
 * Rejects with the error of a helper that broke while it computed.
 */
export async function simulateTogether(
  crew: readonly Helper[],
  { model, asWritten }: Subject,
  options: SimulateOptions,
): Promise<Together> {
  if (asWritten.beyond >= 0) {
    return { simulation: { problems: [beyondCalendar(model, asWritten.beyond)] }, crew: [] };
  }
  const rows = new SharedArrayBuffer(bytesOfTrials(model, asWritten, options));
  const counter = new SharedArrayBuffer(4);
  const trials = newTrials(model, asWritten, options, rows);
  const iterations = trials.iterations;
  const asked = crew.map(async (helper): Promise<Taken> => {
    const answer = await helper.ask({ kind: "join", rows, counter, iterations });
    if (answer.kind !== "joined") throw new Error(`Asked to join, got "${answer.kind}".`);
    return answer;
  });
  const answered = new Set<Helper>();
  asked.forEach((answer, i) => {
    // A helper that is lost before it took a block is not missed.
    answer.then(
      () => answered.add(crew[i] as Helper),
      () => {},
    );
  });

  const count = Math.ceil(iterations / blockSize);
  let done = 0;
  const own = takeBlocks(model, asWritten, trials, counter, () => {
    options.onProgress?.(Math.min(iterations, ++done * blockSize), iterations);
  });
  const complete = own.beyond.task < 0 && own.blocks.length === count;
  const parts = complete ? [own] : [own, ...(await Promise.all(asked))];
  // Who came too late still has its request before it, and could not be asked anything else meanwhile.
  if (complete) for (const helper of crew) if (!answered.has(helper)) helper.end();
  const beyond = parts.map((part) => part.beyond).reduce((a, b) => (b.block < a.block ? b : a));
  if (beyond.task >= 0) return { simulation: { problems: [beyondCalendar(model, beyond.task)] }, crew: [] };
  const sums: TrialSums[] = [];
  for (const part of parts) for (const { block, sums: of } of part.blocks) sums[block] = of;
  for (const part of sums) addSums(trials.sums, part);
  if (trials.moments !== undefined) trials.moments.parts = parts.flatMap(({ moments }) => moments);
  options.onProgress?.(iterations, iterations);
  return { simulation: { trials, asWritten, problems: [] }, crew: complete ? [] : [...crew] };
}

/** The percentiles of all tasks, read by the caller and those who simulated with it. */
export async function ranksTogether(
  { simulation: { trials }, crew }: Together,
  { model, asWritten }: Subject,
  confidence: number,
): Promise<Float64Array | undefined> {
  if (trials === undefined || trials.moments !== undefined || crew.length === 0) return undefined;
  const tasks = model.tasks.length;
  const share = Math.ceil(tasks / (crew.length + 1));
  const asked = crew.map(async (helper, i) => {
    const from = Math.min(tasks, (i + 1) * share);
    const answer = await helper.ask({ kind: "ranks", confidence, from, to: Math.min(tasks, from + share) });
    if (answer.kind !== "ranks") throw new Error(`Asked for ranks, got "${answer.kind}".`);
    return answer.values;
  });
  const own = taskRanks({ model, asWritten, trials }, confidence, 0, Math.min(tasks, share));
  const parts = [own, ...(await Promise.all(asked))];
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
