import { dayNumber, isoDate } from "../../../calendar/dates.ts";
import { tolerance } from "../../../calendar/tolerance.ts";
import { rankSelector } from "../../../forecast/rankSelector.ts";
import { limitRanks, rankOf } from "../../../forecast/ranks.ts";
import type { Plan } from "../../../plan/types.ts";
import { compile } from "../../../simulate/compile.ts";
import type { ComparedStanding } from "../../types.ts";
import { type Outcome, runVariants } from "../../variants.ts";
import type { Terms } from "./terms.ts";
import type { Value } from "./valuesOfPlans.ts";
import { workingDaysFrom } from "./workingDaysFrom.ts";

/** What is asked for: a date, a sum. */
export interface Asked {
  finishBy?: string;
  budget?: number;
}
export interface Chances {
  finishBy?: number;
  budget?: number;
}
export interface Standpoint {
  value: Value;
  standing: ComparedStanding;
  chance: Chances;
}

/** Where a plan stands, in the terms of a comparison. Throws BeyondCalendarError. */
export function standpointOf(
  { newer, earliest, draw, confidence }: Terms,
  plan: Plan,
  asked: Asked,
): Standpoint {
  const n = draw.iterations;
  const workingDays = workingDaysFrom(newer, earliest);
  const model = compile(plan);
  const [result] = runVariants(draw, [{ model }], (outcome): Standpoint => {
    const select = rankSelector(n);
    const rank = rankOf(confidence, n);
    const limits = limitRanks(confidence, n);
    const days = outcome.finishDay.slice().sort();
    const dateAt = (at: number) => isoDate(model.startDay + (days[at - 1] as number));
    const [day = 0] = select(outcome.finish, [rank]);
    const [cost = 0, costLow = 0, costHigh = 0] = select(outcome.cost, [rank, limits.low, limits.high]);
    const worked = workingDays(day, plan.start);
    return {
      value: [worked, cost],
      standing: {
        date: dateAt(rank),
        day: day + (model.startDay - dayNumber(newer.start)),
        workingDays: worked,
        money: cost,
        cost,
        lowDate: dateAt(limits.low),
        highDate: dateAt(limits.high),
        costLow,
        costHigh,
      },
      chance: chancesOf(outcome, model.startDay, asked),
    };
  });
  if (result === undefined) throw new Error("one variant has one outcome"); // what runVariants promises
  return result;
}

function chancesOf({ finishDay, cost }: Outcome, startDay: number, { finishBy, budget }: Asked): Chances {
  const n = finishDay.length;
  const share = (counts: (k: number) => boolean): number => {
    let count = 0;
    for (let k = 0; k < n; k++) if (counts(k)) count++;
    return count / n;
  };
  const last = finishBy === undefined ? 0 : dayNumber(finishBy) - startDay;
  const most = budget === undefined ? 0 : budget + tolerance * Math.max(1, Math.abs(budget));
  return {
    ...(finishBy === undefined ? {} : { finishBy: share((k) => (finishDay[k] as number) <= last) }),
    ...(budget === undefined ? {} : { budget: share((k) => (cost[k] as number) <= most) }),
  };
}
