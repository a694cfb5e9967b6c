import { dayNumber, isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { finishMoment } from "../../calendar/workCalendar.ts";
import type { Plan } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { compile } from "../../simulate/compile.ts";
import type { Money, WorkingDays } from "../../units.ts";

/** The plan as written and the same with an uplift on its length and its cost. */
export interface UpliftedPlan {
  asWritten: { date: string; workingDays: WorkingDays; cost: Money };
  /** Absent without an uplift of duration. */
  finish?: { date: string; workingDays: WorkingDays };
  /** Absent without an uplift of cost; `management` included. */
  cost?: Money;
}

/**
 * The plan as written with per cent added to its working days and to its cost: the early estimate is what the uplift is
 * for, so it is laid on the likely values and not on a forecast that holds ranges and risks already.
 *
 * @param percent     Of the working days, of the cost; absent: none.
 * @param management  Money for managing the risks, added after the uplift (default 0).
 *
 * @returns Undefined where the plan as written runs past the calendar's end.
 */
export function upliftedPlan(
  plan: Plan,
  percent: { duration?: number; cost?: number },
  management = 0,
): UpliftedPlan | undefined {
  const model = compile(plan);
  const { finish, workingDays, cost, beyond } = planAsWritten(model);
  if (beyond >= 0) return undefined;
  const start = dayNumber(plan.start);
  const dateOf = (moment: number) => isoDate(start + Math.max(0, Math.ceil(moment - tolerance) - 1));
  const longer = workingDays * (1 + (percent.duration ?? 0) / 100);
  const day = finishMoment(model.planCalendar, longer);
  if (day > 36_525) return undefined;
  return {
    asWritten: { date: dateOf(finish), workingDays, cost },
    ...(percent.duration !== undefined && { finish: { date: dateOf(day), workingDays: longer } }),
    ...(percent.cost !== undefined && { cost: cost * (1 + percent.cost / 100) + management }),
  };
}
