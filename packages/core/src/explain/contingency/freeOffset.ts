import { workAt } from "../../calendar/workCalendar.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { newBlock } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import { fillAsWritten } from "../../simulate/draws.ts";
import type { Model } from "../../simulate/model.ts";
import { addMoney, newMoneySums } from "../../simulate/money.ts";
import { place } from "../../simulate/place.ts";
import { realise } from "../../simulate/realise.ts";

/**
 * What limited people add to the plan as written, in working days and in money.
 *
 * Limited people as a cause of contingency are what they add beyond that: with the cause off, tasks are placed
 * without limits and this is added, so that the plan as written stays the plan as written and only the waiting that
 * uncertainty brings about counts.
 */
export function freeOffset(model: Model, asWritten: AsWritten): [workingDays: number, money: number] {
  if (!model.limitedPeople) return [0, 0];
  const block = newBlock(model, 1);
  fillAsWritten(model, block);
  realise(model, block);
  place(model, block, asWritten.starts, undefined);
  markFinish(model, block);
  addMoney(model, block, newMoneySums(model));
  const days = workAt(model.planCalendar, block.planFinish[0] as number);
  return [asWritten.workingDays - days, asWritten.cost - (block.cost[0] as number)];
}
