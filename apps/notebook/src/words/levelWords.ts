import { formatDate, formatDays, formatMoney } from "@leeway/charts";
import { type Forecast, type LevelReading, readLevel } from "@leeway/core";
import { committedLevel, roundMoney, type Spoken, withSum } from "./answerWords.ts";

/** The level being looked at, read off the curves of a forecast that commits to another one. */
export function readingOf(forecast: Forecast, trying: number | undefined): LevelReading | undefined {
  if (trying === undefined || trying === forecast.committed.confidence) return undefined;
  return readLevel(forecast, trying);
}

/** What the sentences speak of: the level being looked at, else the one committed to. */
export function spokenOf({ plan, cost, asked }: Forecast, reading: LevelReading): Spoken {
  return { plan, cost, asked, committed: reading };
}

/** How far a level lies beyond the plan as written: only what the curves hold. */
export function readContingencyWords(forecast: Forecast, reading: LevelReading): string {
  const { calendarDays, money } = reading.contingency;
  const spoken = spokenOf(forecast, reading);
  const sum = formatMoney(roundMoney(money, spoken), forecast.plan.currency);
  return withSum(spoken, formatDays(Math.round(calendarDays), "calendar day"), { sum });
}

/** Limits of a level that was read off, and that nothing was run for it. */
export function readLimitsWords(reading: LevelReading): string {
  const { lowDate, highDate } = reading;
  const limits =
    lowDate === highDate
      ? `on ${formatDate(lowDate)}`
      : `between ${formatDate(lowDate)} and ${formatDate(highDate)}`;
  return `Read off the curve, where sampling leaves the date ${limits}; nothing has been run for it.`;
}

/** One level in a few words: "85 %: Tue 23 Nov 2027, EUR 660,000". */
export function levelInShort(spoken: Spoken): string {
  const date = formatDate(spoken.committed.date, "weekday");
  return `${committedLevel(spoken)}: ${withSum(spoken, date, { between: ", " })}`;
}
