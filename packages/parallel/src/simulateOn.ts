import {
  type AsWritten,
  addSums,
  beyondCalendar,
  blockSize,
  type Model,
  type MomentRanks,
  type Moments,
  newTrials,
  type SimulateOptions,
  type Simulation,
  settledMoments,
  type TrialSums,
} from "@leeway/core";
import { shareOut } from "./crew.ts";
import type { Helper } from "./helper.ts";
import { progressOf } from "./progressOf.ts";
import { rowsOf } from "./rows.ts";
import { stretchesOf } from "./share.ts";

/**
 * Simulates on a crew that knows the plan. Rows are put at their place as they come, sums are added block by
 * block in address order: the result is that of `simulate`, to the bit.
 *
 * @returns undefined when no thread could be had.
 */
export async function simulateOn(
  crew: readonly Helper[],
  model: Model,
  asWritten: AsWritten,
  options: SimulateOptions,
): Promise<Simulation | undefined> {
  if (asWritten.beyond >= 0) return { problems: [beyondCalendar(model, asWritten.beyond)] };
  const trials = newTrials(model, asWritten, options);
  const rows = rowsOf(trials);
  const n = trials.iterations;
  const waiting = new Map<number, TrialSums>();
  let summed = 0;
  let beyond = { block: Number.POSITIVE_INFINITY, task: -1 };
  const progress = progressOf(n, options.onProgress);

  const stretches = stretchesOf(n, crew.length, 8 * rows.length);
  const worked = new Set<Helper>();
  const shared = await shareOut(crew, stretches, async (helper, stretch) => {
    // One thread alone stops at the first task without a calendar; what lies behind that block is not needed.
    if (stretch.fromBlock > beyond.block) return;
    worked.add(helper);
    const answer = await helper.ask({ kind: "stretch", ...stretch, total: n }, [], (done) =>
      progress.during(helper, done),
    );
    if (answer.kind !== "stretch") throw new Error(`Asked for a stretch, got "${answer.kind}".`);
    const failed = stretch.fromBlock + answer.sums.length;
    if (answer.beyond >= 0 && failed < beyond.block) beyond = { block: failed, task: answer.beyond };
    const first = stretch.fromBlock * blockSize;
    answer.rows.forEach((row, i) => {
      rows[i]?.set(row, first);
    });
    answer.sums.forEach((sums, b) => {
      waiting.set(stretch.fromBlock + b, sums);
    });
    for (let sums = waiting.get(summed); sums !== undefined; sums = waiting.get(summed)) {
      addSums(trials.sums, sums);
      waiting.delete(summed++);
    }
    progress.after(helper, stretch.iterations);
  });
  if (!shared) return undefined;
  if (trials.moments !== undefined && beyond.task < 0) {
    trials.moments.parts.push(await settle([...worked], model.tasks.length, trials.moments));
  }
  if (beyond.task >= 0) return { problems: [beyondCalendar(model, beyond.task)] };
  return { trials, asWritten, problems: [] };
}

/** Tasks whose moments are settled at once: what each thread kept of them takes some twenty megabytes in a large run. */
const tasksAtOnce = 64;

/**
 * The moments that the crew kept together. Each thread keeps of every task what the others' figures could still make
 * of it; all of that in one place would take as much memory again as the simulation.
 */
async function settle(
  crew: readonly Helper[],
  tasks: number,
  { total, confidence }: Moments,
): Promise<MomentRanks> {
  const settled = settledMoments(tasks, confidence);
  for (let from = 0; from < tasks; from += tasksAtOnce) {
    const to = Math.min(tasks, from + tasksAtOnce);
    const answers = await Promise.all(crew.map((helper) => helper.ask({ kind: "moments", total, from, to })));
    settled.settle(
      from,
      answers.flatMap((answer) => (answer.kind === "moments" ? answer.parts : [])),
    );
  }
  return settled.ranks;
}
