import { dayNumber, isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import type { Outcome } from "../../explain/variants.ts";
import { limitRanks, rankOf } from "../../forecast/ranks.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Model } from "../../simulate/model.ts";
import type { AgreedFrom, Cover, CoverOfDays } from "./types.ts";

/** What is left of an agreed sum and what it has to cover, read off the iterations. Sorts a copy. */
export function coverOfMoney(
  { cost }: Pick<Outcome, "cost">,
  confidence: number,
  asWritten: number,
  agreed: number,
  agreedFrom: AgreedFrom,
): Cover {
  const limit = agreed + tolerance * Math.max(1, Math.abs(agreed));
  const kept = cost.reduce((count, sum) => count + (sum <= limit ? 1 : 0), 0);
  const levels = levelsOf(cost, confidence);
  return { ...coverOf(agreed, asWritten, levels), agreedFrom, chance: kept / cost.length };
}

/** ... of an agreed date, in working days of the plan's calendar. Sorts copies. */
export function coverOfDays(
  model: Model,
  { finish, finishDay }: Pick<Outcome, "finish" | "finishDay">,
  confidence: number,
  asWritten: AsWritten,
  agreedDate: string,
  agreedFrom: AgreedFrom,
): CoverOfDays {
  const { planCalendar, startDay } = model;
  const agreedDay = dayNumber(agreedDate) - startDay;
  const kept = finishDay.reduce((count, day) => count + (day <= agreedDay ? 1 : 0), 0);
  const { committed, low, high } = levelsOf(finish, confidence);
  const days = finishDay.slice().sort();
  const work = (moment: number) => workAt(planCalendar, moment);
  return {
    // To the end of its day, as a finish is read.
    ...coverOf(work(Math.max(0, agreedDay + 1)), asWritten.workingDays, {
      committed: work(committed),
      low: work(low),
      high: work(high),
    }),
    agreedFrom,
    chance: kept / finishDay.length,
    agreedDate,
    asWrittenDate: isoDate(startDay + asWritten.finishDay),
    committedDate: isoDate(startDay + (days[rankOf(confidence, days.length) - 1] as number)),
  };
}

/**
 * Whether less is left than this part of the exposure: the condition of a return trigger. Where there is no exposure
 * left, whether anything is short at all.
 */
export function coverIsBelow({ left, exposure, spare }: Cover, ratio: number): boolean {
  return exposure > tolerance ? left < ratio * exposure - tolerance : spare < -tolerance;
}

interface Levels {
  committed: number;
  low: number;
  high: number;
}

function levelsOf(row: Float64Array, confidence: number): Levels {
  const sorted = row.slice().sort();
  const limits = limitRanks(confidence, row.length);
  const at = (rank: number) => sorted[rank - 1] as number;
  return { committed: at(rankOf(confidence, row.length)), low: at(limits.low), high: at(limits.high) };
}

function coverOf(agreed: number, asWritten: number, levels: Levels): Omit<Cover, "agreedFrom" | "chance"> {
  const left = agreed - asWritten;
  const exposure = levels.committed - asWritten;
  return {
    agreed,
    asWritten,
    left,
    ...levels,
    exposure,
    spare: left - exposure,
    ...(exposure > tolerance ? { ratio: left / exposure } : {}),
  };
}
