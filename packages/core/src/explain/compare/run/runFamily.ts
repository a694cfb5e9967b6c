import {
  bytesOfCalendar,
  bytesOfDrawer,
  bytesOfRows,
  bytesOfTable,
  type Kernel,
} from "../../../kernel/index.ts";
import { type Block, blockSize, drawnAsIs, kernelFor } from "../../../simulate/block.ts";
import type { Model, ModelTask } from "../../../simulate/model.ts";
import { addMoney, newMoneySums } from "../../../simulate/money.ts";
import { newCapacity } from "../../../simulate/people.ts";
import { place } from "../../../simulate/place.ts";
import { realiseTask } from "../../../simulate/realise.ts";
import { type LastFinish, lastFinish } from "../../lastFinish.ts";
import type { Draw } from "../../variants.ts";
import { type FamilyDraws, familyDraws, familyPlan } from "./familyDraws.ts";
import { calendarsOf, type Keys, type Reach, reachBetween } from "./keys.ts";

/** A model with what its rows depend on; all of a family have the same `keys.shape`. */
export interface Member {
  model: Model;
  keys: Keys;
  /** Starts as written, for tasks that hold to them. */
  planned: Float64Array;
}

/** Rows of length n, one value an iteration: days since start, money. */
export interface FamilyOutcome {
  finish: Float64Array;
  cost: Float64Array;
}

/** Rows of outcomes kept at once. */
const keptBytes = 64e6;

/**
 * Runs models of one shape on the same draws and hands each one's outcome to `measure`; what it answers comes back in
 * their order, undefined for a model with a task that runs past what calendars cover.
 *
 * Everything that is drawn is drawn once for all of them; of each model only what differs from the one before is
 * realised and placed again. The outcomes are those of `runVariants`, to the bit. Models that differ by little should
 * follow each other.
 *
 * @param measure  Gets rows that are used again afterwards: copy what is to be kept.
 */
export function runFamily<T>(
  draw: Draw,
  members: readonly Member[],
  measure: (outcome: FamilyOutcome, at: number) => T,
): (T | undefined)[] {
  const n = draw.iterations;
  const results = new Array<T | undefined>(members.length);
  const most = Math.max(1, Math.floor(keptBytes / (16 * n)));
  for (let from = 0; from < members.length; from += most) {
    const batch = members.slice(from, from + most);
    const outcomes = batch.map(() => ({ finish: new Float64Array(n), cost: new Float64Array(n) }));
    const covered = runBatch(draw, batch, outcomes);
    outcomes.forEach((outcome, i) => {
      if (covered[i] === 1) results[from + i] = measure(outcome, from + i);
    });
  }
  return results;
}

interface Step extends Reach {
  block: Block;
  finish: LastFinish;
}

function runBatch(draw: Draw, batch: readonly Member[], outcomes: readonly FamilyOutcome[]): Uint8Array {
  const n = draw.iterations;
  const size = Math.min(n, blockSize);
  const [lead] = batch;
  const covered = new Uint8Array(batch.length).fill(1);
  if (lead === undefined) return covered;
  const plan = familyPlan(batch);
  const kernel = kernelFor(lead.model, size, 2, roomFor(batch, plan, size));
  const frame = frameOf(lead.model, kernel, size);
  const drawn = familyDraws(plan, draw, kernel, size, frame);
  const steps = batch.map(
    (member, i): Step => ({
      ...reachBetween(batch[i - 1], member),
      block: blockOf(member, frame, drawn),
      finish: lastFinish(member.model),
    }),
  );
  const everything = reachBetween(undefined, lead);

  for (let first = 0, b = 0; first < n; first += blockSize, b++) {
    const size = Math.min(blockSize, n - first);
    drawn.fill(b, size);
    // Whether the rows hold the moments of the model before.
    let kept = false;
    batch.forEach(({ model, planned }, i) => {
      if (covered[i] === 0) {
        kept = false;
        return;
      }
      const { block, finish, ...own } = steps[i] as Step;
      const { realise, place: again, count } = kept ? own : everything;
      block.n = size;
      for (const j of realise) realiseTask(model, block, j);
      if (count > 0) {
        const capacity = model.limitedPeople ? newCapacity(model) : undefined;
        if (place(model, block, planned, capacity, again) >= 0) {
          covered[i] = 0;
          kept = false;
          return;
        }
      }
      kept = true;
      finish(block, false);
      addMoney(model, block, newMoneySums(model));
      const outcome = outcomes[i] as FamilyOutcome;
      outcome.finish.set(block.planFinish.subarray(0, size), first);
      outcome.cost.set(block.cost.subarray(0, size), first);
    });
  }
  return covered;
}

/** Rows that belong to the tasks of whichever model is being computed. */
function frameOf(model: Model, kernel: Kernel, size: number): Block {
  const { arena } = kernel;
  const tasks = model.tasks.length;
  const [planFinish, cost, scratch, scratch2] = arena.rows(4, size) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  return {
    kernel,
    n: size,
    draws: [],
    occurs: [],
    needed: [],
    duration: arena.rows(tasks, size),
    wait: arena.rows(tasks, size),
    start: arena.rows(tasks, size),
    finish: arena.rows(tasks, size),
    moves: [],
    pushed: [],
    planFinish,
    planFinishDay: arena.int32(1, size)[0] as Int32Array,
    cost,
    scratch,
    scratch2,
  };
}

/** The frame with a model's own draws in it. */
function blockOf({ model, keys }: Member, frame: Block, drawn: FamilyDraws): Block {
  const draws = keys.slots.map(drawn.slot);
  return {
    ...frame,
    draws,
    occurs: keys.occurs.map(drawn.occurs),
    needed: keys.needed.map((key) => (key === undefined ? undefined : drawn.needed(key))),
    duration: model.tasks.map((task, j) =>
      drawnAsIs(task) ? (draws[task.duration.slot] as Float64Array) : (frame.duration[j] as Float64Array),
    ),
    wait: model.tasks.map((task, j) => (waits(model, task) ? frame.wait[j] : undefined)),
  };
}

function waits(model: Model, task: ModelTask): boolean {
  return task.impacts.some((at) => model.register[at.entry]?.impacts[at.impact]?.wait !== undefined);
}

/** Bytes beyond two blocks of the first model: everything drawn, a row more for each task, all calendars. */
function roomFor(
  batch: readonly Member[],
  { parts, slots, entries, tasks }: ReturnType<typeof familyPlan>,
  size: number,
): number {
  const calendars = new Set(batch.flatMap(({ model }) => calendarsOf(model)));
  let bytes = bytesOfRows(slots + (batch[0]?.model.tasks.length ?? 0), size, 8);
  bytes += bytesOfRows(entries + tasks, size, 1);
  for (const calendar of calendars) bytes += bytesOfCalendar(calendar);
  for (const { model } of parts) {
    const outcomes = model.slots.reduce(
      (sum, { estimate }) => sum + (estimate.kind === "outcomes" ? estimate.outcomes.length : 0),
      0,
    );
    bytes += model.slots.length * (bytesOfTable + bytesOfRows(2, 1, 8)) + bytesOfRows(2, outcomes, 8);
    bytes += bytesOfDrawer(model.slots.length) + bytesOfRows(2 + model.groups.length, blockSize, 8);
    bytes += bytesOfRows(2 * (model.correlated?.slots.length ?? 0), blockSize, 8);
  }
  return bytes;
}
