import { workAt } from "../calendar/workCalendar.ts";
import { type Block, newBlock, undrawnKernel } from "./block.ts";
import { markMoving } from "./critical.ts";
import { fillAsWritten } from "./draws.ts";
import type { Model } from "./model.ts";
import { addMoney, type MoneySums, newMoneySums } from "./money.ts";
import { newCapacity } from "./people.ts";
import { place } from "./place.ts";
import { realise } from "./realise.ts";

/** The plan as written: one iteration with every draw at its as-written value. */
export interface AsWritten {
  block: Block;
  /** By task: as-written starts, the floor of those that hold to the plan. */
  starts: Float64Array;
  finish: number;
  finishDay: number;
  workingDays: number;
  cost: number;
  money: MoneySums;
  /** By task: as-written durations before any impact. */
  bareDurations: Float64Array;
  /** A task that runs past the calendar's end, or -1. */
  beyond: number;
}

/** The plan with every estimate at its likely value and no risk occurring: finish (days since the start) and cost (currency of the plan). */
export function planAsWritten(model: Model): AsWritten {
  const block = newBlock(model, 1, undrawnKernel(model, 1));
  fillAsWritten(model, block);
  for (const row of block.occurs) row.fill(0);
  realise(model, block);
  const bareDurations = Float64Array.from(block.duration, (row) => row[0] as number);

  fillAsWritten(model, block);
  realise(model, block);
  const beyond = place(model, block, undefined, model.limitedPeople ? newCapacity(model) : undefined);
  markMoving(model, block, model.limitedPeople);
  const money = newMoneySums(model);
  addMoney(model, block, money);
  const finish = block.planFinish[0] as number;
  return {
    block,
    starts: Float64Array.from(block.start, (row) => row[0] as number),
    finish,
    finishDay: block.planFinishDay[0] as number,
    workingDays: workAt(model.planCalendar, finish),
    cost: block.cost[0] as number,
    money,
    bareDurations,
    beyond,
  };
}
