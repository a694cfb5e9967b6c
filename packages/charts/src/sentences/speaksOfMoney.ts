import type { Confidence, Forecast, Reach, Responses } from "@leeway/core";

/**
 * Whether a forecast speaks of money at all. A plan without a cost, a rate or a budget is told in dates and days alone:
 * a sum of nought would be one that nobody asked for.
 */
export function forecastSpends({ cost, asked }: Pick<Forecast, "cost" | "asked">): boolean {
  return cost.sd > 0 || cost.mean !== 0 || asked.budget !== undefined;
}

/** Whether levels set side by side differ in money: in what they hold or in what lateness costs. */
export function levelsSpend({ steps, joint, lateness }: Confidence): boolean {
  return joint.asked !== undefined || lateness !== undefined || steps.some(({ cost }) => cost !== 0);
}

/** Whether responses are weighed against money: the plan's own, theirs, or that of lateness. */
export function responsesSpend({ responses, stands, asked }: Responses): boolean {
  return (
    asked.budget !== undefined ||
    stands.mean.cost !== 0 ||
    stands.mean.lateness !== undefined ||
    responses.some(({ cost, given, alone }) => cost !== 0 || given.netWorth !== 0 || alone.netWorth !== 0)
  );
}

/** Whether what it would take, or what is there already, has a price. */
export function reachSpends({ asked, stands, ways, best }: Reach): boolean {
  return (
    asked.sum !== undefined ||
    stands.mean.cost !== 0 ||
    stands.mean.lateness !== undefined ||
    [...ways, ...(best === undefined ? [] : [best])].some(
      ({ cost, outlook }) => cost !== 0 || outlook.mean.cost !== 0,
    )
  );
}
