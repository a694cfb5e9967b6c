import { workAt } from "../calendar/workCalendar.ts";
import { type RankSelector, rankSelector } from "../forecast/rankSelector.ts";
import { rankOf } from "../forecast/ranks.ts";
import type { Model } from "../simulate/model.ts";
import type { Settings } from "./settings.ts";
import { type Draw, type Outcome, runVariants } from "./variants.ts";

/** Where a variant's iterations stand: working days of the plan's calendar, and money. */
export interface Measure {
  /** At the level asked for. */
  level: [workingDays: number, money: number];
  mean: [workingDays: number, money: number];
}

/**
 * Reads the measure of one outcome.
 *
 * @param select  Made by `rankSelector` for at least as many iterations, when there are many outcomes.
 */
export function measureOf(
  { planCalendar }: Model,
  { finish, cost }: Pick<Outcome, "finish" | "cost">,
  confidence: number,
  select: RankSelector = rankSelector(finish.length),
): Measure {
  const n = finish.length;
  const rank = rankOf(confidence, n);
  let days = 0;
  let money = 0;
  for (let k = 0; k < n; k++) {
    days += workAt(planCalendar, finish[k] as number);
    money += cost[k] as number;
  }
  const [day = 0] = select(finish, [rank]);
  const [sum = 0] = select(cost, [rank]);
  return { level: [workAt(planCalendar, day), sum], mean: [days / n, money / n] };
}

/** Measures of variants of one model at a level. Whoever computes them, the same numbers. */
export function measureVariants(
  model: Model,
  draw: Draw,
  confidence: number,
  settings: readonly Settings[],
  onProgress?: (done: number, total: number) => void,
): Measure[] {
  const select = rankSelector(draw.iterations);
  return runVariants(
    draw,
    settings.map((own) => ({ model, settings: own })),
    (outcome) => measureOf(model, outcome, confidence, select),
    onProgress,
  );
}
