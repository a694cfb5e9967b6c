import { dayNumber, isoDate } from "../../../calendar/dates.ts";
import { tolerance } from "../../../calendar/tolerance.ts";
import { rankSelector } from "../../../forecast/rankSelector.ts";
import { limitRanks, rankOf } from "../../../forecast/ranks.ts";
import type { Plan } from "../../../plan/types.ts";
import { compile } from "../../../simulate/compile.ts";
import type { ComparedStanding } from "../../types.ts";
import { type Draw, type Outcome, runVariants } from "../../variants.ts";
import { workingDaysFrom } from "./workingDaysFrom.ts";

/** Committed working days and money of a plan. */
export type Value = readonly [workingDays: number, money: number];

/** Runs plans on the same draws and reads them off at one level, all in the new plan's terms. */
export interface Runner {
  valueOf(plan: Plan): Value;
  /** The same, with what stands beside it in a report. */
  standingOf(plan: Plan, asked: Asked): Standpoint;
}
export interface Standpoint {
  value: Value;
  standing: ComparedStanding;
  chance: Chances;
}

export interface Asked {
  finishBy?: string;
  budget?: number;
}
export interface Chances {
  finishBy?: number;
  budget?: number;
}

/**
 * @param newer     Its calendar counts working days, and its start is day 0.
 * @param earliest  The earlier of the two plans' starts.
 *
 * A run throws BeyondCalendarError when a task runs past what calendars cover.
 */
export function runner(newer: Plan, earliest: string, draw: Draw, confidence: number): Runner {
  const n = draw.iterations;
  const workingDays = workingDaysFrom(newer, earliest);
  const select = rankSelector(n);
  const rank = rankOf(confidence, n);
  const outcomeOf = <T>(plan: Plan, read: (outcome: Outcome, startDay: number) => T): T => {
    const model = compile(plan);
    const [result] = runVariants(draw, [{ model }], (outcome) => ({ read: read(outcome, model.startDay) }));
    if (result === undefined) throw new Error("one variant has one outcome"); // runVariants' contract
    return result.read;
  };
  const valueIn = (plan: Plan, { finish, cost }: Outcome): Value => {
    const [day = 0] = select(finish, [rank]);
    const [sum = 0] = select(cost, [rank]);
    return [workingDays(day, plan.start), sum];
  };
  return {
    valueOf: (plan) => outcomeOf(plan, (outcome) => valueIn(plan, outcome)),
    standingOf: (plan, asked) =>
      outcomeOf(plan, (outcome, startDay) => {
        const value = valueIn(plan, outcome);
        const limits = limitRanks(confidence, n);
        const days = outcome.finishDay.slice().sort();
        const dateAt = (at: number) => isoDate(startDay + (days[at - 1] as number));
        const [day = 0] = select(outcome.finish, [rank]);
        const [costLow = 0, costHigh = 0] = select(outcome.cost, [limits.low, limits.high]);
        const standing = {
          date: dateAt(rank),
          day: day + (startDay - dayNumber(newer.start)),
          workingDays: value[0],
          money: value[1],
          cost: value[1],
          lowDate: dateAt(limits.low),
          highDate: dateAt(limits.high),
          costLow,
          costHigh,
        };
        return { value, standing, chance: chancesOf(outcome, startDay, asked) };
      }),
  };
}

function chancesOf({ finishDay, cost }: Outcome, startDay: number, { finishBy, budget }: Asked): Chances {
  const n = finishDay.length;
  const share = (counts: (k: number) => boolean): number => {
    let count = 0;
    for (let k = 0; k < n; k++) if (counts(k)) count++;
    return count / n;
  };
  const sum = budget === undefined ? 0 : budget + tolerance * Math.max(1, Math.abs(budget));
  return {
    ...(finishBy === undefined
      ? {}
      : { finishBy: share((k) => startDay + (finishDay[k] as number) <= dayNumber(finishBy)) }),
    ...(budget === undefined ? {} : { budget: share((k) => (cost[k] as number) <= sum) }),
  };
}
