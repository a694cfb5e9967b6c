import type { Standing } from "@leeway/core";
import type { FlagText } from "../draw/flags.ts";
import type { Measure } from "../measure/types.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { roundSignificant } from "../words/roundSignificant.ts";

/** The plan as written and the commitment as marks: each with its date or its sum. */
export function standingFlags(
  asWritten: Standing,
  committed: Standing,
  measure: Measure,
  level: string,
): { from: FlagText; to: FlagText } {
  return {
    from: { level: "asWritten", title: "As written", detail: standingWords(asWritten, measure) },
    to: { level: "committed", title: "Committed", detail: `${standingWords(committed, measure)} · ${level}` },
  };
}

/** The date of a standing, or its sum in four significant digits. */
export function standingWords({ date, cost }: Standing, { what, unit }: Measure): string {
  return what === "date" ? formatDate(date) : formatMoney(roundSignificant(cost, 4), unit);
}
