import { isoDate } from "../../calendar/dates.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import { rankOf } from "../../forecast/ranks.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Model } from "../../simulate/model.ts";
import type { Standing } from "../types.ts";
import type { Outcome } from "../variants.ts";

/** The plan as written, as a standing. */
export function standingAsWritten(model: Model, asWritten: AsWritten): Standing {
  return {
    date: isoDate(model.startDay + asWritten.finishDay),
    day: asWritten.finish,
    workingDays: asWritten.workingDays,
    cost: asWritten.cost,
    money: asWritten.cost,
  };
}

/** Where the iterations stand at a level: the percentile of the finish, its date, and of the cost. Sorts copies. */
export function standingAt(model: Model, rows: Omit<Outcome, "lateness">, p: number): Standing {
  const rank = rankOf(p, rows.finish.length) - 1;
  const day = rows.finish.slice().sort()[rank] as number;
  const cost = rows.cost.slice().sort()[rank] as number;
  return {
    date: isoDate(model.startDay + (rows.finishDay.slice().sort()[rank] as number)),
    day,
    workingDays: workAt(model.planCalendar, day),
    cost,
    money: cost,
  };
}
