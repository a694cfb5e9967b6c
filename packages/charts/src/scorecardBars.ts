import type { Scorecard, ScoreEntry } from "@leeway/core";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { drawRanges } from "./ranges/drawRanges.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { plainName, quoteName } from "./words/plainName.ts";

/** More rows cannot be read in one picture; the table beneath has them all. */
const MOST = 40;

/**
 * Finished tasks: the range that was said and what happened, each as a multiple of its likely value, the furthest over
 * first. Reads `entries` of time and `overall`.
 */
export function scorecardBars(card: Scorecard, options: ChartOptions): Figure {
  const timed = card.entries.filter(({ of, likely }) => of === "duration" && likely > 0);
  const entries = [...timed].sort((a, b) => b.actual / b.likely - a.actual / a.likely);
  const subtitle =
    "Bar: one in ten below to one in ten above; tick: likely; dot: what happened, a ring where outside; times the likely value";
  const table = {
    columns: [
      { name: "Task", align: "start" as const },
      { name: "1 in 10 below", unit: "working days", align: "end" as const },
      { name: "Likely", unit: "working days", align: "end" as const },
      { name: "1 in 10 above", unit: "working days", align: "end" as const },
      { name: "Actual", unit: "working days", align: "end" as const },
      { name: "", align: "start" as const },
    ],
    rows: entries.map((entry) => [
      plainName(entry.name),
      ...[entry.p10, entry.likely, entry.p90, entry.actual].map(oneDecimal),
      entry.where,
    ]),
  };
  const { overall } = card;
  if (overall === undefined || entries.length === 0) {
    const sentence = "No finished task has a range to be compared with what happened.";
    return {
      title: "Nothing to score yet",
      subtitle,
      summary: sentence,
      table,
      svg: emptyDrawing(sentence, options),
    };
  }
  const { inside } = overall;
  const title = `${inside.k} of ${inside.n} tasks stayed inside their one-in-ten range; 8 in 10 are meant to`;
  const [furthest] = entries;
  const over =
    furthest === undefined
      ? ""
      : ` Furthest over: ${quoteName(furthest.name)}, ${multiple(furthest)} its likely value.`;
  const rows = entries.slice(0, MOST).map((entry) => ({
    name: plainName(entry.name),
    word: entry.where === "inside" ? "" : entry.where,
    low: entry.p10 / entry.likely,
    likely: 1,
    high: entry.p90 / entry.likely,
    actual: entry.actual / entry.likely,
    text: multiple(entry),
  }));
  return {
    title,
    subtitle,
    summary:
      `${inside.k} of ${inside.n} (${formatPercent(inside.share)}, limits ${formatPercent(inside.low)} to ` +
      `${formatPercent(inside.high)} at 95 %) inside, ${overall.below} below, ${overall.above} above.${over}`,
    table,
    svg: drawRanges(rows, { name: "Times the likely value", at: { value: 1, name: "likely" } }, options),
  };
}

function multiple({ actual, likely }: ScoreEntry): string {
  return `${(actual / likely).toFixed(2)} ×`;
}

function oneDecimal(value: number): string {
  return value.toFixed(1);
}
