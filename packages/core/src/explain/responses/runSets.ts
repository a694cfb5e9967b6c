import { bytesOfCalendar, bytesOfRows } from "../../kernel/index.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { type Block, blockSize, kernelFor, newBlock } from "../../simulate/block.ts";
import { draws } from "../../simulate/draws.ts";
import type { Model, ModelEntry, ModelTask } from "../../simulate/model.ts";
import { taskCost } from "../../simulate/money.ts";
import { newCapacity } from "../../simulate/people.ts";
import { place } from "../../simulate/place.ts";
import { realiseTask } from "../../simulate/realise.ts";
import { lateCost } from "../../simulate/worth.ts";
import { lastFinish } from "../lastFinish.ts";
import { reachOf, touchesOf } from "../settings.ts";
import { BeyondCalendarError, type Outcome } from "../stage.ts";
import { addOthers } from "../totalCost.ts";
import type { Draw } from "../variants.ts";
import { inNearOrder } from "./nearOrder.ts";
import type { Scenarios, SwitchSet } from "./scenarios.ts";

/** Rows of outcomes kept at once. */
const keptBytes = 64e6;

/** One set, and what has to be computed again once the set before it has been. */
interface Step {
  at: number;
  model: Model;
  /** By entry: the row of its occurrences. */
  occurs: number[];
  changed: number[];
  placed: Uint8Array;
  count: number;
  priced: readonly number[];
  planned: Float64Array;
}

/**
 * Runs the plan with each of these sets of switches on, all on the same draws, and hands each one's outcome to
 * `measure`; what it answers comes back in the order of the sets.
 *
 * Estimates are drawn once for all sets, an entry's occurrences once for each chance it can have. Sets are gone
 * through so that neighbours differ by little, and only what a difference reaches is placed again. The outcome of
 * a set is that of `compile` and `simulate` of the plan with these decisions taken, to the bit.
 *
 * @param measure  Gets rows that are used again afterwards: copy what is to be kept.
 *
 * Throws BeyondCalendarError when a task of a scenario runs past what calendars cover.
 */
export function runSets<T>(
  scenarios: Scenarios,
  draw: Draw,
  sets: readonly SwitchSet[],
  measure: (outcome: Outcome, at: number) => T,
  onProgress?: (done: number, total: number) => void,
): T[] {
  const n = draw.iterations;
  const results = new Array<T>(sets.length);
  const order = inNearOrder(scenarios, sets);
  const priced = scenarios.drawn.lateness !== undefined;
  const most = Math.max(1, Math.floor(keptBytes / (n * (priced ? 28 : 20))));
  const rows = order.slice(0, most).map(() => newOutcome(n, priced));
  let done = 0;
  for (let from = 0; from < order.length; from += most) {
    const batch = order.slice(from, from + most);
    const run = runner(scenarios, draw, sets, batch);
    for (let first = 0, b = 0; first < n; first += blockSize, b++) {
      const size = Math.min(blockSize, n - first);
      run.load(b, size);
      batch.forEach((_, i) => {
        run.compute(i, rows[i] as Outcome, first);
      });
      done += size * batch.length;
      onProgress?.(done, sets.length * n);
    }
    batch.forEach((at, i) => {
      results[at] = measure(rows[i] as Outcome, at);
    });
  }
  return results;
}

function newOutcome(n: number, priced: boolean): Outcome {
  return {
    finish: new Float64Array(n),
    finishDay: new Int32Array(n),
    cost: new Float64Array(n),
    ...(priced ? { lateness: new Float64Array(n) } : {}),
  };
}

/** Rows for the draws, and one block that becomes one set after the other. */
function runner(scenarios: Scenarios, draw: Draw, sets: readonly SwitchSet[], batch: readonly number[]) {
  const { drawn, frame } = scenarios;
  const size = Math.min(draw.iterations, blockSize);
  const variants: ModelEntry[] = [];
  const steps = stepsOf(scenarios, sets, batch, variants);
  const kernel = kernelFor(frame, size, 4 + roomFor(frame, size, variants.length, steps));
  const work = newBlock(frame, size, kernel);
  const [never] = kernel.arena.bytes(1, size) as [Uint8Array];
  const occurs = kernel.arena.bytes(variants.length, size);
  const slots = draws({ ...drawn, register: [], groups: [] }, draw.seed, draw.design);
  const events = draws(eventsOf(drawn, variants), draw.seed, draw.design);
  const block: Block = { ...work, needed: [...work.needed], occurs: [] };
  const costs = new Map(costlyTasks(frame).map((j) => [j, kernel.arena.rows(1, size)[0] as Float64Array]));
  // In the frame every task that some set leaves out may be left out: its last tasks are those of any set.
  const finish = lastFinish(frame);

  return {
    load(b: number, n: number): void {
      work.n = n;
      block.n = n;
      slots.fill(b, { ...work, occurs: [] });
      events.fill(b, { ...work, draws: [], needed: [], occurs });
    },
    compute(i: number, into: Outcome, first: number): void {
      const { model, changed, placed, count, priced, planned, occurs: rows } = steps[i] as Step;
      const { n } = block;
      block.occurs = rows.map((row) => occurs[row] as Uint8Array);
      model.tasks.forEach(({ chance }, j) => {
        block.needed[j] = chance >= 1 ? undefined : chance <= 0 ? never : work.needed[j];
      });
      for (const j of changed) realiseTask(model, block, j);
      if (count > 0) {
        const capacity = model.limitedPeople ? newCapacity(model) : undefined;
        const beyond = place(model, block, planned, capacity, placed);
        if (beyond >= 0) throw new BeyondCalendarError(beyondCalendar(model, beyond));
        finish(block, false);
      }
      for (const j of priced) {
        const part = costs.get(j);
        if (part !== undefined) taskCost(model.tasks[j] as ModelTask, j, block, part);
      }
      // In id order, then the rest, as `addMoney` adds up: the same to the bit.
      block.cost.fill(0, 0, n);
      for (const part of costs.values()) kernel.addCost(block.cost, part, n);
      addOthers(model, block);
      into.finish.set(block.planFinish.subarray(0, n), first);
      into.finishDay.set(block.planFinishDay.subarray(0, n), first);
      into.cost.set(block.cost.subarray(0, n), first);
      if (into.lateness !== undefined) lateCost(model, block, first, into.lateness);
    },
  };
}

/** Tasks that may cost anything at all. */
function costlyTasks({ tasks }: Model): number[] {
  return tasks.flatMap(({ cost, costPerDay, peoplePerDay, progress }, j) => {
    const priced = [cost, costPerDay].some(({ slot, value }) => slot >= 0 || value !== 0);
    return priced || peoplePerDay !== 0 || progress?.spent !== undefined ? [j] : [];
  });
}

/** A model of nothing but events, to have them drawn by the one function that draws them. */
function eventsOf(model: Model, register: ModelEntry[]): Model {
  return { ...model, tasks: [], slots: [], correlated: undefined, register };
}

/** Blocks' worth of room for rows of events, and for calendars of added capacity: `frame` has its own already. */
function roomFor(frame: Model, size: number, events: number, steps: readonly Step[]): number {
  const calendars = new Set(
    steps.flatMap(({ model }) => model.tasks.flatMap((task) => [task.calendar, task.ownCalendar])),
  );
  for (const { model } of steps) {
    for (const task of model.tasks) for (const link of task.links) calendars.add(link.lagCalendar);
  }
  let bytes = bytesOfRows(events + 1, size, 1);
  for (const calendar of calendars) bytes += bytesOfCalendar(calendar);
  return Math.ceil(bytes / bytesOfRows(frame.slots.length + 4 * frame.tasks.length + 8, size, 8));
}

function stepsOf(
  scenarios: Scenarios,
  sets: readonly SwitchSet[],
  batch: readonly number[],
  variants: ModelEntry[],
): Step[] {
  const { drawn } = scenarios;
  const touches = touchesOf(drawn);
  const planned = startsAsWritten(drawn);
  const rowOf = new Map<string, number>();
  const all = drawn.tasks.map((_, j) => j);
  let before: { model: Model; capacity: SwitchSet; starts: Float64Array } | undefined;
  return batch.map((at) => {
    const set = sets[at] as SwitchSet;
    const model = scenarios.model(set);
    const capacity = scenarios.capacityOf(set);
    const starts = planned(model, capacity);
    const occurs = model.register.map((entry, e) => {
      const key = `${e}/${entry.lo}/${entry.hi}/${entry.fact}`;
      const known = rowOf.get(key);
      if (known !== undefined) return known;
      rowOf.set(key, variants.length);
      return variants.push(entry) - 1;
    });
    const reach =
      before === undefined || before.capacity !== capacity || before.starts !== starts
        ? { changed: all, placed: new Uint8Array(all.length).fill(1), count: all.length, priced: all }
        : reachOf(model, touches, difference(before.model, model), model.limitedPeople);
    before = { model, capacity, starts };
    return { at, model, occurs, planned: starts, ...reach };
  });
}

/** Starts of the plan as written, for tasks that hold to them; nothing else looks at them. */
function startsAsWritten(drawn: Model): (model: Model, capacity: SwitchSet) => Float64Array {
  if (!drawn.tasks.some((task) => task.holdToPlan)) {
    const none = new Float64Array(drawn.tasks.length);
    return () => none;
  }
  const known = new Map<string, Float64Array>();
  return (model, capacity) => {
    // All of a set that the plan as written sees: what has occurred, how much of it is left, and what is needed.
    const facts = model.register.map(({ fact, scale }) => (fact === 1 ? scale : "-"));
    const needed = model.tasks.map(({ chance }) => (chance >= 0.5 ? 1 : 0));
    const key = `${capacity}|${facts.join()}|${needed.join("")}`;
    const starts = known.get(key) ?? planAsWritten(model).starts;
    known.set(key, starts);
    return starts;
  };
}

function difference(a: Model, b: Model) {
  const entries = new Set<number>();
  const needed = new Set<number>();
  b.register.forEach((entry, e) => {
    const other = a.register[e] as ModelEntry;
    const same =
      entry.lo === other.lo &&
      entry.hi === other.hi &&
      entry.fact === other.fact &&
      entry.scale === other.scale;
    if (!same) entries.add(e);
  });
  b.tasks.forEach((task, j) => {
    if (task.chance !== (a.tasks[j] as ModelTask).chance) needed.add(j);
  });
  return { slots: new Set<number>(), entries, needed, people: false };
}
