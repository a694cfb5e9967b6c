import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { rankOf } from "../../forecast/ranks.ts";
import type { Model } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import type { JointConfidence, JointPair } from "../types.ts";
import type { Draw, Outcome } from "../variants.ts";
import { correlation } from "./correlation.ts";
import { densityGrid } from "./densityGrid.ts";
import { equalLevel } from "./equalLevel.ts";
import { equalPairs } from "./equalPairs.ts";
import { jointChance } from "./jointChance.ts";

/** The rows that date and money are read from, and what they were drawn with. */
export type JointRows = Draw & Omit<Outcome, "lateness">;

/**
 * Date and money together, read off the iterations: the chance of both, the pairs that share one chance, and the
 * equal level that gives it. Dates are whole days: a date is kept by whoever finishes within it.
 *
 * @param options.confidence  The level committed to; default the plan's.
 * @param options.joint  The chance of both that is wanted; default the level committed to.
 *
 * Cost: a few sorts of n. `equal.level` goes in steps of 1 / n.
 */
export function jointConfidence(
  model: Model,
  trials: JointRows,
  options: { confidence?: number; joint?: number } = {},
): JointConfidence {
  const { iterations: n, finishDay, cost } = trials;
  const confidence = options.confidence ?? model.confidence;
  const joint = options.joint ?? confidence;
  const pair = (day: number, sum: number, slack = 0): JointPair => {
    const kept = jointChance(finishDay, cost, day, sum + slack);
    return {
      date: isoDate(model.startDay + day),
      day: day + 1,
      cost: sum,
      finishLevel: kept.finish,
      costLevel: kept.cost,
      both: kept.both,
    };
  };
  const rank = rankOf(confidence, n) - 1;
  const committed = pair(finishDay.slice().sort()[rank] as number, cost.slice().sort()[rank] as number);
  const { finishByDay, budget } = model;
  const asked =
    finishByDay === undefined || budget === undefined
      ? undefined
      : pair(finishByDay, budget, tolerance * Math.max(1, Math.abs(budget)));
  const wanted = rankOf(joint, n);
  const equal = equalLevel(finishDay, cost, wanted);
  return {
    stamp: stampOf(model, trials),
    atCommitted: committed.both,
    committed,
    ...(asked === undefined ? {} : { asked }),
    equal: {
      joint,
      level: equal.level,
      date: isoDate(model.startDay + equal.day),
      day: equal.day + 1,
      cost: equal.cost,
      both: jointChance(finishDay, cost, equal.day, equal.cost).both,
    },
    frontier: {
      joint,
      pairs: equalPairs(finishDay, cost, wanted).map((each) => pair(each.day, each.cost)),
    },
    density: densityGrid(finishDay, cost),
    correlation: correlation(trials.finish, cost),
  };
}
