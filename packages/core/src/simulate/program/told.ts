import type { AsWritten } from "../asWritten.ts";
import type { Model } from "../model.ts";
import { newSums, type TrialSums } from "../trials.ts";

/** Where a program tells what a block came to: offsets in bytes. */
export interface ToldLayout {
  /** Of task j: own days where it moves, how many move, sum of durations, how many have no length, money. */
  task(j: number): number;
  /** Of impact i of all tasks, task by task: days, money. */
  impact(i: number): number;
  /** Of cost c of all entries, entry by entry. */
  cost(c: number): number;
  response(r: number): number;
  /** Five sums. */
  pair(p: number): number;
  /** Draws cut at zero, 32 bits. */
  cut(slot: number): number;
  bytes: number;
}

export function toldLayout(model: Model): ToldLayout {
  let impacts = 0;
  let costs = 0;
  for (const task of model.tasks) impacts += task.impacts.length;
  for (const entry of model.register) costs += costsOf(entry);
  const ofImpacts = 40 * model.tasks.length;
  const ofCosts = ofImpacts + 16 * impacts;
  const ofResponses = ofCosts + 8 * costs;
  const ofPairs = ofResponses + 8 * model.responses.length;
  const ofCuts = ofPairs + 40 * model.pairs.length;
  return {
    task: (j) => 40 * j,
    impact: (i) => ofImpacts + 16 * i,
    cost: (c) => ofCosts + 8 * c,
    response: (r) => ofResponses + 8 * r,
    pair: (p) => ofPairs + 40 * p,
    cut: (slot) => ofCuts + 4 * slot,
    bytes: Math.ceil((ofCuts + 4 * model.slots.length) / 8) * 8,
  };
}

export function costsOf(entry: Model["register"][number]): number {
  return entry.impacts.filter((impact) => impact.cost !== undefined).length;
}

/**
 * The sums of a block of n iterations from what its program told at `at`: as `tally`, to the bit, except for targets and
 * overheads.
 *
 * @param sums  Written over: those of an earlier block.
 */
export function sumsTold(
  model: Model,
  asWritten: AsWritten,
  layout: ToldLayout,
  buffer: ArrayBufferLike,
  at: number,
  n: number,
  sums: TrialSums = newSums(model),
): TrialSums {
  const told = new Float64Array(buffer, at, layout.bytes >> 3);
  const cuts = new Uint32Array(buffer, at, layout.bytes >> 2);
  const of = (offset: number) => told[offset >> 3] as number;
  sums.entryDays.fill(0);
  sums.entryMoney.fill(0);
  const { money } = asWritten;
  let impact = 0;
  for (let j = 0; j < model.tasks.length; j++) {
    const task = model.tasks[j] as Model["tasks"][number];
    const from = layout.task(j) >> 3;
    let own = told[from] as number;
    sums.critical[j] = told[from + 1] as number;
    sums.duration[j] = told[from + 2] as number;
    sums.points[j] = told[from + 3] as number;
    sums.needed[j] = n;
    const spent = told[from + 4] as number;
    sums.taskMoney[j] = spent;
    let ownMoney = spent - n * (money.tasks[j] as number);
    for (const { entry } of task.impacts) {
      const inDuration = of(layout.impact(impact));
      const added = of(layout.impact(impact) + 8);
      impact++;
      own -= inDuration;
      ownMoney -= added;
      sums.entryDays[entry] = (sums.entryDays[entry] as number) + inDuration;
      sums.entryMoney[entry] = (sums.entryMoney[entry] as number) + added;
    }
    sums.ownDays[j] = own;
    sums.ownMoney[j] = ownMoney;
  }
  let cost = 0;
  model.register.forEach((entry, e) => {
    let sum = 0;
    for (let c = costsOf(entry); c > 0; c--) sum += of(layout.cost(cost++));
    const add = sum - n * (money.entries[e] as number);
    sums.entryMoney[e] = (sums.entryMoney[e] as number) + add;
  });
  for (let p = 0; p < 5 * model.pairs.length; p++) sums.pairs[p] = of(layout.pair(0) + 8 * p);
  for (let r = 0; r < model.responses.length; r++) sums.responses[r] = of(layout.response(r));
  for (let s = 0; s < model.slots.length; s++) sums.cuts[s] = cuts[layout.cut(s) >> 2] as number;
  return sums;
}
