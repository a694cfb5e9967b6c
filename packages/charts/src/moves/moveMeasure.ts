import type { Comparison } from "@leeway/core";
import { moneyUnit } from "../axes/roundTicks.ts";
import type { Measure } from "../measure/types.ts";
import { columnDays } from "../words/columnDays.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { groupDigits } from "../words/groupDigits.ts";
import { roundMove } from "../words/roundMove.ts";

/** How far changes moved a date or a sum, rounded as the sentences about them round it: one move is one figure everywhere. */
export function moveMeasure({ moves, difference, plan }: Comparison, of: "days" | "money"): Measure {
  if (of === "days")
    return {
      amount: (effect) => effect.workingDays,
      what: "date",
      unit: "working days",
      currency: "",
      less: "earlier",
      more: "later",
      least: 0.05,
      column: (value) => columnDays(value, true),
      say: (value) => formatDays(Math.abs(value)),
    };
  const { currency } = plan;
  const sizes = [difference, ...moves].map(({ money }) => Math.abs(money)).filter(Number.isFinite);
  const unit = moneyUnit(Math.max(0, ...sizes), currency);
  return {
    amount: (effect) => effect.money,
    what: "sum",
    unit: unit.name,
    currency,
    less: "cheaper",
    more: "dearer",
    least: 0.5,
    column: (value) => {
      const rounded = roundMove(value);
      if (rounded === 0) return "0";
      if (unit.divisor === 1) return formatMoney(rounded, "", true);
      const size = Math.abs(rounded) / unit.divisor;
      const decimals = Math.max(0, 1 - Math.floor(Math.log10(size) + 1e-9));
      return `${value < 0 ? "−" : "+"}${groupDigits(size, decimals)}`;
    },
    say: (value) => formatMoney(Math.abs(roundMove(value)), currency),
  };
}
