import type { Forecast } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { tornadoFigure } from "./tornado/tornadoFigure.ts";
import { formatMoney } from "./words/formatMoney.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { roundSignificant } from "./words/roundSignificant.ts";
import { roundToLimits } from "./words/roundToLimits.ts";

/**
 * What moves the committed cost: as `tornadoDays`, in money, two significant digits.
 *
 * Reads `tornado` and `committed`. Without a tornado the figure says so.
 */
export function tornadoMoney(forecast: Forecast, options: ChartOptions): Figure {
  const { committed } = forecast;
  const { currency } = forecast.plan;
  const sum = formatMoney(roundToLimits(committed.cost, committed.costLow, committed.costHigh), currency);
  const measure = {
    amount: (side: { money: number }) => side.money,
    // A ten-thousandth of the sum is below any digit shown of it.
    least: Math.max(1e-9, Math.abs(committed.cost) * 1e-4),
    what: "the committed cost",
    unit: currency,
    less: "cheaper",
    more: "dearer",
    format: (change: number) => formatMoney(roundSignificant(change, 2), "", true),
    say: (change: number) => {
      const size = formatMoney(roundSignificant(Math.abs(change), 2), currency);
      return change === 0 ? "no change" : `${size} ${change < 0 ? "less" : "more"}`;
    },
    flag: {
      level: "committed" as const,
      title: "Committed",
      detail: `${sum} · ${formatPercent(committed.confidence)}`,
    },
  };
  return tornadoFigure(forecast, measure, options);
}
