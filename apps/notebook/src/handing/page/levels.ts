import { formatDate, formatPercent } from "@leeway/charts";
import { type Forecast, readLevel } from "@leeway/core";
import { committedLevel, committedSum, withSum } from "../../words/answerWords.ts";
import { readLimitsWords, spokenOf } from "../../words/levelWords.ts";

/** What the page says at one level, and where its lines stand, in per cent of each drawing's width. */
export interface Level {
  words: string;
  limits: string;
  finish: number;
  cost: number;
  finishSlim: number;
  costSlim: number;
}
export interface Levels {
  /** Place of the level committed to. */
  start: number;
  levels: Level[];
}
/** A drawing as far as a line over it goes: px of the drawing. */
export interface Place {
  width: number;
  x(value: number): number;
}
/** Of the drawing for a wide screen, and of that for a slim one. */
export interface Places {
  broad: Place;
  slim: Place;
}

/** Every level of a whole per cent that the curves hold, as it is read off them. */
export function levelsOf(forecast: Forecast, finish: Places, cost: Places): Levels {
  const { confidence } = forecast.committed;
  const known = Array.from({ length: 95 }, (_, k) => (k + 3) / 100);
  const nearest = Math.round(confidence * 100) / 100;
  const levels = known.map((p): Level => {
    const reading = readLevel(forecast, p);
    const committed = p === nearest;
    const spoken = committed ? forecast : spokenOf(forecast, reading);
    const share = (place: Place, value: number) => Math.round((place.x(value) / place.width) * 10_000) / 100;
    return {
      words: `${withSum(
        spoken,
        `${committedLevel(spoken)} of futures finish by ${formatDate(spoken.committed.date, "long")}`,
        {
          sum: committedSum(spoken),
          between: `, and ${formatPercent(spoken.committed.confidence)} cost no more than `,
        },
      )}.`,
      limits: committed
        ? "This is the level committed to; the figures are those of the run."
        : readLimitsWords(reading),
      finish: share(finish.broad, reading.day),
      cost: share(cost.broad, reading.cost),
      finishSlim: share(finish.slim, reading.day),
      costSlim: share(cost.slim, reading.cost),
    };
  });
  return { start: Math.max(0, known.indexOf(nearest)), levels };
}
