import type { ContingencyLeft } from "../../budget/left/types.ts";
import type { CostPercentile, FinishPercentile, Forecast } from "../../forecast/types.ts";
import type { IsoDate, Plan } from "../../plan/types.ts";
import type { HistoryFacts, KeptFinish } from "./types.ts";

/** What the caller knows beside the forecast. */
export interface Occasion {
  /** Today. */
  date: IsoDate;
  what: string;
  who?: string;
  why?: string;
}

/** What a history keeps of a forecast; `left` where contingency left is known. */
export function historyFacts(
  plan: Plan,
  forecast: Forecast,
  left: Pick<ContingencyLeft, "money" | "days"> | undefined,
  { date, ...change }: Occasion,
): HistoryFacts {
  const { committed, asked, chance, asWritten } = forecast;
  const finishAt = (p: number): KeptFinish => {
    const { date: day, workingDays } = percentile(forecast.finish.percentiles, p);
    return { date: day, workingDays };
  };
  const costAt = (p: number) => percentile(forecast.cost.percentiles, p).value;
  const { money, days } = left ?? {};
  return {
    history: 1,
    date,
    ...(plan.statusDate === undefined ? {} : { statusDate: plan.statusDate }),
    start: plan.start,
    sha256: plan.sha256,
    approvalSha256: plan.approvalSha256,
    seed: forecast.seed,
    iterations: forecast.iterations,
    design: forecast.design,
    version: forecast.version,
    confidence: committed.confidence,
    currency: plan.currency,
    asWritten: { date: asWritten.finish, workingDays: asWritten.workingDays, cost: asWritten.cost },
    finish: {
      p10: finishAt(0.1),
      p50: finishAt(0.5),
      p80: finishAt(0.8),
      p90: finishAt(0.9),
      committed: {
        date: committed.date,
        workingDays: committed.workingDays,
        lowDate: committed.lowDate,
        highDate: committed.highDate,
      },
    },
    cost: {
      p10: costAt(0.1),
      p50: costAt(0.5),
      p80: costAt(0.8),
      p90: costAt(0.9),
      committed: committed.cost,
      low: committed.costLow,
      high: committed.costHigh,
    },
    asked: {
      ...(asked.finishBy === undefined ? {} : { finishBy: asked.finishBy }),
      ...(asked.budget === undefined ? {} : { budget: asked.budget }),
    },
    chance: { ...chance },
    ...(money === undefined && days === undefined
      ? {}
      : {
          left: {
            ...(money === undefined ? {} : { money: { left: money.left, exposure: money.exposure } }),
            ...(days === undefined ? {} : { days: { left: days.left, exposure: days.exposure } }),
          },
        }),
    approvals: plan.approvals.flatMap(({ who, decision, date: on, plan: hash }) =>
      hash !== undefined && hash !== "" && plan.approvalSha256.startsWith(hash)
        ? [{ who, decision, ...(on === undefined ? {} : { date: on }) }]
        : [],
    ),
    change,
  };
}

function percentile<P extends FinishPercentile | CostPercentile>(percentiles: readonly P[], p: number): P {
  // The forecast always holds the standard levels.
  return percentiles.find((each) => each.p === p) as P;
}
