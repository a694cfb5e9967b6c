import type { Forecast, Plan } from "@leeway/core";
import { spends } from "../words/answerWords.ts";

/** Whether a sum can be asked for: the plan spends, or something that could be decided on has a price. */
export function namesMoney(plan: Plan, forecast: Forecast | undefined): boolean {
  if (forecast === undefined || spends(forecast)) return true;
  const entries = [...plan.risks, ...plan.assumptions];
  return (
    entries.some(({ responses }) => responses.some(({ cost }) => cost !== undefined)) ||
    plan.people.some(({ couldAdd }) => couldAdd !== undefined && couldAdd.cost !== 0)
  );
}
