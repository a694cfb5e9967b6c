import { formatDate, formatDays, formatMoney, formatPercent, roundToLimits } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import type { AdjustedScenario } from "../verbs/scorecard.ts";
import { explanationStamp } from "./confidenceHead.ts";
import { hasMoney } from "./moneyWords.ts";
import { type Page, table, wrap } from "./page.ts";
import { plainText } from "./plainText.ts";

/** What the adjustment would do to a plan, beside what the plan says: a scenario, nothing is written. */
export function adjustedScenarioLines({ plain, adjusted }: AdjustedScenario, { width }: Page): string[] {
  const money = hasMoney(plain);
  const level = formatPercent(plain.committed.confidence);
  const row = (name: string, { committed, contingency, plan }: Forecast) => [
    name,
    formatDate(committed.date, "weekday"),
    `${formatDate(committed.lowDate, "shortest")} to ${formatDate(committed.highDate, "shortest")}`,
    formatDays(contingency.workingDays, ""),
    ...(money
      ? [formatMoney(roundToLimits(committed.cost, committed.costLow, committed.costHigh), plan.currency)]
      : []),
  ];
  const { seed, iterations, design, version, plan } = plain;
  return [
    ...wrap(
      plainText(
        `If the ranges of ${plain.plan.title} lean and miss as these did (a scenario; nothing is changed)`,
      ),
      width,
    ),
    ...table(
      [
        { heading: "", align: "left" },
        { heading: `finish at ${level}`, align: "left" },
        { heading: "sampling limits", align: "left" },
        { heading: "contingency, days", align: "right" },
        ...(money ? [{ heading: `cost at ${level}`, align: "right" as const }] : []),
      ],
      [row("as it is", plain), row("adjusted", adjusted)],
      width,
    ),
    ...wrap(
      "Contingency is counted from each one's own likely values. Where the team has already allowed for past misses, " +
        "this counts them twice.",
      width,
    ),
    ...wrap(explanationStamp({ seed, iterations, design, version, sha256: plan.sha256 }), width),
  ];
}
