import type { Forecast } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { tornadoFigure } from "./tornado/tornadoFigure.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatDays } from "./words/formatDays.ts";
import { formatPercent } from "./words/formatPercent.ts";

/**
 * What moves the committed finish: each item held at its low and at its high side, all else as it was. The
 * twelve that reach furthest, in working days.
 *
 * Reads `tornado` and `committed`. Without a tornado the figure says so.
 */
export function tornadoDays(forecast: Forecast, options: ChartOptions): Figure {
  const { committed } = forecast;
  const measure = {
    amount: (side: { workingDays: number }) => side.workingDays,
    least: 0.05,
    what: "the committed finish",
    unit: "working days",
    less: "earlier",
    more: "later",
    format: (change: number) => columnDays(change, true),
    say: (change: number) => {
      const size = formatDays(Math.abs(change));
      return size.startsWith("0 ") ? "no change" : `${size} ${change < 0 ? "earlier" : "later"}`;
    },
    flag: {
      level: "committed" as const,
      title: "Committed",
      detail: `${formatDate(committed.date)} · ${formatPercent(committed.confidence)}`,
    },
  };
  return tornadoFigure(forecast, measure, options);
}
