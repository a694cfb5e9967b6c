import type { Explanation, Standing } from "@leeway/core";
import type { FlagText } from "../draw/flags.ts";
import type { Measure } from "../measure/types.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { limitStep, roundToLimits, roundToStep } from "../words/roundToLimits.ts";

/** The plan as written and the commitment as marks: each with its date or its sum, both sums to the same place. */
export function standingFlags(
  { asWritten, committed, limits }: Explanation,
  measure: Measure,
  level: string,
): { from: FlagText; to: FlagText } {
  const { cost } = committed;
  const step = limits === undefined ? undefined : limitStep(cost, limits.low.money, limits.high.money);
  const words = (standing: Standing) =>
    measure.what === "date" || step === undefined
      ? standingWords(standing, measure)
      : formatMoney(roundToStep(standing.cost, step), measure.currency);
  return {
    from: { level: "asWritten", title: "As written", detail: words(asWritten) },
    to: { level: "committed", title: "Committed", detail: `${words(committed)} · ${level}` },
  };
}

/** The date of a standing, or its sum: what its limits support where it has any, else four significant digits. */
export function standingWords(
  { date, cost, costLow, costHigh }: Standing & { costLow?: number; costHigh?: number },
  { what, currency }: Measure,
): string {
  if (what === "date") return formatDate(date);
  const rounded =
    costLow === undefined || costHigh === undefined
      ? roundSignificant(cost, 4)
      : roundToLimits(cost, costLow, costHigh);
  return formatMoney(rounded, currency);
}
