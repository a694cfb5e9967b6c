import type { Comparison } from "@leeway/core";
import type { About, ChartOptions, Figure } from "./figure/types.ts";
import { moneyMeasure } from "./measure/moneyMeasure.ts";
import { difference, movesFigure } from "./moves/movesFigure.ts";

/**
 * What moved the committed sum between two plans: as `movesDays`, in money.
 *
 * @param about  Says the currency: a forecast or `{ plan }` of the later plan.
 */
export function movesMoney(comparison: Comparison, about: About, options: ChartOptions): Figure {
  const whole = difference(comparison, { amount: (effect) => effect.money });
  const amounts = [whole, ...comparison.moves.map((move) => move.money)];
  return movesFigure(comparison, moneyMeasure(amounts, about.plan.currency), options);
}
