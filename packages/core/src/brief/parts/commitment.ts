import type { Plan } from "../../plan/types.ts";
import { someoneOf } from "../someone.ts";
import type { BriefAnswers, BriefCommitment } from "../types.ts";

/** Date and sum at the level with their limits, what was asked for, the plan as written, and what lies between. */
export function briefCommitment(plan: Plan, { forecast, confidence }: BriefAnswers): BriefCommitment {
  const { commitment } = plan;
  const { finishBy, budget } = forecast.asked;
  const [date, sum] = [forecast.finish.sd === 0, forecast.cost.sd === 0];
  const holder = someoneOf(plan)(commitment.holder);
  return {
    committed: forecast.committed,
    ...(date || sum ? { certain: { date, sum } } : {}),
    asWritten: {
      ...forecast.asWritten,
      finishChance: forecast.finish.asWrittenChance,
      costChance: forecast.cost.asWrittenChance,
    },
    asked: {
      ...(finishBy === undefined ? {} : { finishBy }),
      ...(budget === undefined ? {} : { budget }),
    },
    chance: forecast.chance,
    contingency: forecast.contingency,
    ...(forecast.people === undefined ? {} : { people: forecast.people }),
    ...(holder === undefined ? {} : { holder }),
    ...(commitment.releaseRule === undefined ? {} : { releaseRule: commitment.releaseRule }),
    ...(commitment.reserve === undefined ? {} : { reserve: commitment.reserve }),
    together: confidence.joint.equal,
    ...(forecast.firstShortfall === undefined ? {} : { firstShortfall: forecast.firstShortfall }),
  };
}
