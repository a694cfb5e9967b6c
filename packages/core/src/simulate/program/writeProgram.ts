import { bytesOfRows, type Kernel, type TablesToMake } from "../../kernel/index.ts";
import { shapeRules } from "../../plan/shapes.ts";
import { outcomeTable } from "../../sampling/index.ts";
import { standardise } from "../../sampling/shapes/standardise.ts";
import type { AsWritten } from "../asWritten.ts";
import { type Block, blockSize, drawnAsIs } from "../block.ts";
import type { Amount, Model, ModelTask, Slot } from "../model.ts";
import { newSteps, none, step } from "./steps.ts";
import { bytesOfWords, wordsOfEntry, wordsOfGroup, wordsOfSlot } from "./streams.ts";
import { type ToldLayout, toldLayout } from "./told.ts";

/** Addresses of rows of all iterations, or of a block where moments are not kept. */
export interface Rows {
  /** Addresses: of all iterations, or of a block. */
  starts: readonly number[];
  finishes: readonly Float64Array[];
  finish: Float64Array;
  finishDay: Int32Array;
  cost: Float64Array;
}

/** A program in a kernel's memory, and what has to stand beside it. */
export interface Program {
  at: number;
  /** The task whose placing begins at an offset of the program. */
  taskAt: ReadonlyMap<number, number>;
}

/** Draws that are read once, right after they are drawn, take turns in so many rows. */
const turns = 16;

/** Bytes that a program and its own rows take in an arena, roughly and never too few. */
export function bytesOfProgram(model: Model): number {
  const { slots, tasks, register } = model;
  let links = 0;
  let impacts = 0;
  let costs = 0;
  for (const task of tasks) {
    links += task.links.length;
    impacts += task.impacts.length;
  }
  for (const entry of register) costs += entry.impacts.length;
  const steps =
    256 * tasks.length + 16 * links + 256 * impacts + 64 * (slots.length + costs) + 64 * register.length;
  const rest = 16 * model.pairs.length + 64 * model.responses.length + 4096;
  return (
    steps +
    rest +
    bytesOfRows(turns + 3 + model.groups.length, blockSize, 8) +
    bytesOfRows(2, tasks.length + 1, 8) +
    bytesOfRows(1, 48 * slots.length, 1) +
    bytesOfWords(model) +
    toldLayout(model).bytes +
    512
  );
}

/** How a slot is drawn: address of its table, and whether no draw can be below 0. */
export interface Law {
  table: number;
  shift: number;
  scale: number;
  neverBelow: boolean;
}

/** By slot; undefined for estimates with outcomes. `later`: PERT tables are not made but noted there. */
export function lawsOf(model: Model, kernel: Kernel, later?: TablesToMake): (Law | undefined)[] {
  return model.slots.map(({ estimate }) => {
    if (estimate.kind !== "range") return undefined;
    const { shape, parameter, shift, scale } = standardise(estimate);
    const table = kernel.table(shape, parameter, later).byteOffset;
    // The standard laws with two ends begin at 0.
    const neverBelow = shapeRules[shape].ends === "both" && shift >= 0 && scale >= 0;
    return { table, shift, scale, neverBelow };
  });
}

/** Addresses of rows of a block: draws by slot, durations and marks by task, occurrences by entry. */
export interface BlockAddresses {
  draws: number[];
  durations: number[];
  moves: number[];
  occurs: number[];
}

export function addressesOf({ draws, duration, moves, occurs }: Block): BlockAddresses {
  return {
    draws: draws.map(addressOf),
    durations: duration.map(addressOf),
    moves: moves.map(addressOf),
    occurs: occurs.map(addressOf),
  };
}

/** Rows for blocks of `size` iterations that only a program works on, with one row for all starts, which are not kept. */
export function newAddresses(
  model: Model,
  { arena }: Kernel,
  size: number,
): BlockAddresses & { starts: number[] } {
  const draws = arena.addresses(model.slots.length, size, 8);
  const [start = 0] = arena.addresses(1, size, 8);
  const other = arena.addresses(model.tasks.length, size, 8);
  return {
    draws,
    starts: model.tasks.map(() => start),
    durations: model.tasks.map((task, j) =>
      drawnAsIs(task) ? (draws[task.duration.slot] as number) : (other[j] as number),
    ),
    moves: arena.addresses(model.tasks.length, size, 1),
    occurs: arena.addresses(model.register.length, size, 1),
  };
}

/** Addresses of rows that a program needs besides those of the block. */
export interface LocalRows {
  spare: number[];
  zero: number;
  uniforms: number;
  constantRow: number;
  groups: number[];
  /** The latest finish of each task, and the plan's smallest. */
  latest: number;
  least: number;
}

export function localRows(model: Model, { arena }: Kernel): LocalRows {
  const [zero, uniforms, constantRow, ...spare] = arena.rows(3 + turns, blockSize).map(addressOf) as [
    number,
    number,
    number,
    ...number[],
  ];
  const groups = arena.rows(model.groups.length, blockSize).map(addressOf);
  const latest = addressOf(arena.rows(1, model.tasks.length + 1)[0] as Float64Array);
  return { spare, zero, uniforms, constantRow, groups, latest, least: latest + 8 * model.tasks.length };
}

/**
 * Writes what a block of the model does, for a model that `followsProgram`: draw, realise, pay, place, mark, sum. Sums
 * are those of `tally` and `addMoney`, in the same order.
 *
 * @param words  Where the words of ten blocks begin that streams are seeded from (`streamsOf`).
 */
export function writeProgram(
  model: Model,
  asWritten: AsWritten,
  words: number,
  kernel: Kernel,
  block: BlockAddresses,
  local: LocalRows,
  laws: readonly (Law | undefined)[],
  rows: Rows,
  layout: ToldLayout,
): Program {
  const { arena } = kernel;
  const steps = newSteps();
  const { spare, zero, uniforms, constantRow, groups, latest, least } = local;
  const { durations, moves, occurs } = block;
  const total = addressOf(rows.cost);
  const planFinish = addressOf(rows.finish);
  const once = drawnOnce(model);
  /** Where each slot is drawn; -1: not yet. */
  const drawn = new Float64Array(model.slots.length).fill(-1);
  const addressOfSlot = (s: number) => drawn[s] as number;
  const records = drawRecords(model, kernel, laws);
  let turn = 0;
  let asked = 0;
  let done = 0;
  const waiting: number[] = [];
  /** By task: how many draws must be done before it is realised. */
  const askedBy = new Int32Array(model.tasks.length);
  let known = 0;
  let realised = 0;
  /** Draws what waits, by fours unless it is the rest; then writes what waited for it. */
  const flush = (rest: boolean) => {
    const now = rest ? waiting.length : waiting.length & ~3;
    if (now > 0) {
      const first = records.next();
      for (const s of waiting.splice(0, now)) records.put(s, words, addressOfSlot(s), layout);
      steps.add(step.draw, [now, first]);
      done += now;
    }
    for (; realised < known && (askedBy[realised] as number) <= done; realised++) {
      const task = model.tasks[realised] as ModelTask;
      realise(task, realised);
      pay(task, realised);
    }
  };
  const draw = (s: number) => {
    if (addressOfSlot(s) >= 0) return;
    const slot = model.slots[s] as Slot;
    drawn[s] = once[s] === 1 ? (spare[turn++ % turns] as number) : (block.draws[s] as number);
    if (slot.estimate.kind === "outcomes") {
      const { values, upTo } = outcomeTable(slot.estimate);
      steps.add(step.uniforms, [words + wordsOfSlot(s), uniforms]);
      const tables = [addressOf(arena.table(values)), addressOf(arena.table(upTo)), values.length];
      steps.add(step.outcomes, [...tables, uniforms, addressOfSlot(s), slot.cut ? 1 : 0, layout.cut(s)]);
      return;
    }
    waiting.push(s);
    asked++;
  };

  steps.add(step.clearTold, [layout.bytes]);
  steps.add(step.fill, [total, 1], [0]);
  steps.add(step.fill, [planFinish, 1], [0]);
  // Other draws first: impacts are needed as soon as a duration is there.
  const ofTasks = new Set(
    model.tasks.flatMap(({ duration, cost, costPerDay }) => [duration.slot, cost.slot, costPerDay.slot]),
  );
  for (let s = 0; s < model.slots.length; s++) if (!ofTasks.has(s)) draw(s);
  flush(true);
  const drawnGroups = new Set<number>();
  model.register.forEach((entry, e) => {
    const out = occurs[e] as number;
    if (entry.fact !== undefined) {
      steps.add(step.fillBytes, [out, entry.fact]);
      return;
    }
    const u = entry.group < 0 ? uniforms : (groups[entry.group] as number);
    if (entry.group < 0) steps.add(step.uniforms, [words + wordsOfEntry(model, e), u]);
    else if (!drawnGroups.has(entry.group)) {
      steps.add(step.uniforms, [words + wordsOfGroup(model, entry.group), u]);
      drawnGroups.add(entry.group);
    }
    steps.add(step.occur, [u, out], [entry.lo, entry.hi]);
  });

  /** The row of an amount, a constant written into `into`. */
  const rowOf = (amount: Amount, into: number): number => {
    if (amount.slot >= 0) return addressOfSlot(amount.slot);
    steps.add(step.fill, [into, 0], [amount.value]);
    return into;
  };
  const realise = (task: ModelTask, j: number) => {
    const out = durations[j] as number;
    const { slot, value } = task.duration;
    if (slot < 0) steps.add(step.fill, [out, 0], [value * task.durationScale]);
    else if (addressOfSlot(slot) !== out)
      steps.add(step.scale, [out, addressOfSlot(slot)], [task.durationScale]);
    for (const kind of ["factor", "delay"] as const) {
      for (const at of task.impacts) {
        const entry = model.register[at.entry] as Model["register"][number];
        const amount = entry.impacts[at.impact]?.[kind];
        if (amount === undefined) continue;
        const row = rowOf(amount, constantRow);
        const hit = [out, occurs[at.entry] as number, row];
        if (kind === "factor") steps.add(step.multiplyImpact, hit, [entry.scale]);
        else steps.add(step.addImpact, hit, [at.delayScale]);
      }
    }
    steps.add(step.sumDuration, [out, layout.task(j) + 16]);
  };
  const pay = (task: ModelTask, j: number) => {
    const { cost, costPerDay, peoplePerDay } = task;
    const out = durations[j] as number;
    const money = layout.task(j) + 32;
    const rate = costPerDay.value + peoplePerDay;
    const daily = costPerDay.slot >= 0 || costPerDay.value !== 0 || peoplePerDay !== 0;
    if (cost.slot < 0 && cost.value === 0 && !daily) return;
    const first = rowOf(cost, constantRow);
    if (costPerDay.slot >= 0) {
      steps.add(step.addTaskCost, [total, first, addressOfSlot(costPerDay.slot), out, money], [peoplePerDay]);
    } else if (daily) steps.add(step.addDailyCost, [total, first, out, money, 0], [rate]);
    else steps.add(step.addCost, [total, first, money]);
  };
  model.tasks.forEach((task, j) => {
    const { duration, cost, costPerDay } = task;
    if (duration.slot >= 0) draw(duration.slot);
    if (cost.slot >= 0) draw(cost.slot);
    if (costPerDay.slot >= 0) draw(costPerDay.slot);
    askedBy[j] = asked;
    known++;
    flush(false);
  });
  flush(true);

  let cost = 0;
  model.register.forEach((entry, e) => {
    for (const impact of entry.impacts) {
      if (impact.cost === undefined) continue;
      const row = rowOf(impact.cost, constantRow);
      steps.add(step.addCostWhere, [total, occurs[e] as number, row, layout.cost(cost++), 0], [entry.scale]);
    }
  });
  model.responses.forEach((response, r) => {
    steps.add(step.addCost, [total, rowOf(response.cost, constantRow), layout.response(r)]);
  });

  const taskAt = new Map<number, number>();
  const placings = new Int32Array(model.tasks.length);
  /** Starts that share a row are computed again where they are looked at. */
  const again = rows.starts.length > 1 && rows.starts[0] === rows.starts[1];
  const { starts } = rows;
  const finishes = rows.finishes.map(addressOf);
  for (const j of model.order) {
    const task = model.tasks[j] as ModelTask;
    const { days, order, last } = calendarOf(kernel, task);
    const held = task.holdToPlan ? (asWritten.starts[j] as number) : 0;
    const earliest = Math.max((model.statusDay ?? -1) + 1, held, task.notBefore);
    taskAt.set(steps.length(), j);
    placings[j] = steps.length();
    const own = [durations[j] as number, starts[j] as number, finishes[j] as number];
    steps.add(
      step.place,
      [task.links.length, ...own, days, order, planFinish, zero, latest + 8 * j],
      [earliest, last],
      task.links.map((link) => finishes[link.from] as number),
    );
  }
  steps.add(step.dates, [planFinish, addressOf(rows.finishDay), least]);
  model.tasks.forEach((task, j) => {
    const { days, gap, end } = calendarOf(kernel, task);
    const own = [finishes[j] as number, moves[j] as number, latest + 8 * j];
    steps.add(step.beginMarks, [...own, days, planFinish, least, 0], [gap, end]);
  });
  for (let o = model.order.length - 1; o >= 0; o--) {
    const j = model.order[o] as number;
    const task = model.tasks[j] as ModelTask;
    const { days, gap, end } = calendarOf(kernel, task);
    const own = [durations[j] as number, moves[j] as number, starts[j] as number];
    steps.add(
      step.mark,
      [task.links.length, ...own, days, layout.task(j), again ? (placings[j] as number) : 0],
      [asWritten.bareDurations[j] as number, gap, end],
      task.links.flatMap((link) => [moves[link.from] as number, finishes[link.from] as number]),
    );
  }
  let impact = 0;
  model.tasks.forEach((task, j) => {
    for (const at of task.impacts) {
      const entry = model.register[at.entry] as Model["register"][number];
      const { delay, factor } = entry.impacts[at.impact] ?? {};
      const perDay = task.costPerDay;
      const row = (amount: Amount | undefined) =>
        amount === undefined || amount.slot < 0 ? none : addressOfSlot(amount.slot);
      const kinds = (delay === undefined ? 0 : 1) + (factor === undefined ? 0 : 2);
      steps.add(
        step.sumImpact,
        [
          occurs[at.entry] as number,
          moves[j] as number,
          row(delay),
          row(factor),
          row(task.duration),
          row(perDay),
          kinds,
          layout.impact(impact++),
          0,
        ],
        [
          at.delayScale,
          delay?.value ?? 0,
          entry.scale,
          factor?.value ?? 0,
          task.durationScale,
          perDay.value,
          task.peoplePerDay,
        ],
      );
    }
  });
  model.pairs.forEach(([a, b], p) => {
    steps.add(step.sumProducts, [durations[a] as number, durations[b] as number, layout.pair(p)]);
  });
  steps.add(step.end, []);
  const bytes = steps.bytes();
  const program = arena.bytes(1, bytes.length)[0] as Uint8Array;
  program.set(bytes);
  return { at: program.byteOffset, taskAt };
}

function addressOf(row: { byteOffset: number }): number {
  return row.byteOffset;
}

function calendarOf(kernel: Kernel, task: ModelTask) {
  const { everyDay, days, order, last, gap, end } = kernel.arena.calendar(task.calendar);
  return everyDay
    ? { days: 0, order: 0, last: 0, gap: 0, end: 0 }
    : { days: addressOf(days), order: addressOf(order), last, gap, end };
}

/** Slots of tasks that are read once, as the task is paid for: what they cost, where no impact comes back to it. */
function drawnOnce(model: Model): Uint8Array {
  const once = new Uint8Array(model.slots.length);
  for (const { cost, costPerDay, impacts } of model.tasks) {
    if (cost.slot >= 0) once[cost.slot] = 1;
    if (costPerDay.slot >= 0 && impacts.length === 0) once[costPerDay.slot] = 1;
  }
  return once;
}

/** Records of draws (packages/core/kernel/assembly/drawMany.ts). */
function drawRecords(model: Model, kernel: Kernel, laws: readonly (Law | undefined)[]) {
  const { buffer, byteOffset } = kernel.arena.bytes(1, 48 * model.slots.length)[0] as Uint8Array;
  const integers = new Uint32Array(buffer, byteOffset, 12 * model.slots.length);
  const doubles = new Float64Array(buffer, byteOffset, 6 * model.slots.length);
  let next = 0;
  return {
    /** Where the next one will stand. */
    next: () => byteOffset + 48 * next,
    put(s: number, words: number, row: number, layout: ToldLayout) {
      const { cut } = model.slots[s] as Slot;
      const { table, shift, scale, neverBelow } = laws[s] as Law; // only those with one wait
      const at = 12 * next;
      integers[at] = words + wordsOfSlot(s);
      integers[at + 1] = table;
      integers[at + 2] = row;
      integers[at + 3] = cut && !neverBelow ? 1 : 0;
      doubles[6 * next + 2] = shift;
      doubles[6 * next + 3] = scale;
      integers[at + 9] = layout.cut(s);
      next++;
    },
  };
}
