import type { Forecast } from "../../forecast/types.ts";
import type { Benefit, Plan } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/index.ts";
import type { BriefRecommendation } from "../types.ts";

/** Neighbours of the level committed to that are shown as alternatives. */
const neighbours = [0.5, 0.9];

/**
 * What is recommended and what else there is. Doing nothing forgoes the benefits the plan states: they are told as
 * written, in full (no ramp), so that the figures are the plan's own.
 */
export function briefRecommendation(plan: Plan, forecast: Forecast): BriefRecommendation {
  const { decision } = plan;
  const { confidence } = forecast.committed;
  const benefits = [...plan.benefits].sort((a, b) => (a.id < b.id ? -1 : 1)).map(forgone);
  const monthly = plan.benefits.flatMap((benefit) => {
    const sum = moneyAMonth(benefit);
    return sum === undefined ? [] : [sum];
  });
  return {
    ...(decision?.recommend === undefined ? {} : { recommend: decision.recommend }),
    doNothing: {
      ...(decision?.doNothing === undefined ? {} : { text: decision.doNothing }),
      ...(monthly.length === 0 ? {} : { perMonth: monthly.reduce((sum, each) => sum + each, 0) }),
      benefits,
    },
    alternatives: (decision?.alternatives ?? []).map(({ name, text }) =>
      text === undefined ? { name } : { name, text },
    ),
    levels: neighbours
      .filter((p) => p !== confidence)
      .flatMap((p) => {
        const finish = forecast.finish.percentiles.find((each) => each.p === p);
        const cost = forecast.cost.percentiles.find((each) => each.p === p);
        return finish === undefined || cost === undefined ? [] : [{ p, date: finish.date, cost: cost.value }];
      }),
  };
}

function forgone(benefit: Benefit): BriefRecommendation["doNothing"]["benefits"][number] {
  const { id, name, amount, quantity, unit, per } = benefit;
  const stated = amount ?? quantity;
  return {
    id,
    name,
    amount: stated === undefined ? 0 : asWrittenValue(stated),
    ...(unit === undefined ? {} : { unit }),
    per,
    money: amount !== undefined,
  };
}

/** As written, in money a month in full, as the plan format counts months; undefined where it is not worth money. */
function moneyAMonth(benefit: Benefit): number | undefined {
  const { amount, quantity, worth, per } = benefit;
  if (per === "once") return undefined;
  const stated = amount ?? (worth === undefined ? undefined : quantity);
  if (stated === undefined) return undefined;
  const times = { day: 365.25 / 12, week: 365.25 / 84, month: 1, year: 1 / 12 }[per];
  return asWrittenValue(stated) * (amount === undefined ? (worth ?? 0) : 1) * times;
}
