import { dayNumber, isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import { limitRanks } from "./ranks.ts";
import type { Curve, Forecast } from "./types.ts";

/** What a level would mean, read off the curves of a forecast of another: nothing is run for it. */
export interface LevelReading {
  confidence: number;
  date: string;
  lowDate: string;
  highDate: string;
  /** Days since start. */
  day: number;
  cost: number;
  costLow: number;
  costHigh: number;
  /** Over the plan as written. */
  contingency: { calendarDays: number; money: number };
}

/**
 * Reads a level off the curves, which hold every half per cent: on those points day and sum are the percentiles a
 * run at that level would give, between them those of the next point up. The limits are widened to the curve's
 * points, so they are never too narrow, except beyond its ends, where they stop.
 *
 * @param p  0.005 to 0.995; anything beyond is read at the end.
 *
 * Edges: a finish that is a milestone may be read a day otherwise than a moment of work; the date is kept between
 * those of the levels around it.
 */
export function readLevel(forecast: Forecast, p: number): LevelReading {
  const { finish, cost, asWritten, iterations: n } = forecast;
  const ranks = limitRanks(p, n);
  const low = pointBelow(finish.curve, ranks.low / n);
  const high = pointFrom(finish.curve, ranks.high / n);
  const k = pointFrom(finish.curve, p);
  const at = (curve: Curve, point: number) => curve.at[point] as number;
  const date = dateReader(forecast);
  const day = at(finish.curve, k);
  return {
    confidence: p,
    date: date(day),
    lowDate: date(at(finish.curve, low)),
    highDate: date(at(finish.curve, high)),
    day,
    cost: at(cost.curve, k),
    costLow: at(cost.curve, low),
    costHigh: at(cost.curve, high),
    contingency: { calendarDays: day - asWritten.day, money: at(cost.curve, k) - asWritten.cost },
  };
}

/** The first point of the curve at `p` or above; its last where there is none. */
function pointFrom({ p: points }: Curve, p: number): number {
  const k = points.findIndex((each) => each >= p - tolerance);
  return k < 0 ? points.length - 1 : k;
}

function pointBelow({ p: points }: Curve, p: number): number {
  return Math.max(
    0,
    points.findLastIndex((each) => each <= p + tolerance),
  );
}

/** Dates of moments, read as the forecast reads its own. */
function dateReader({ finish, plan }: Forecast): (moment: number) => string {
  const start = dayNumber(plan.start);
  const asFinish = (moment: number) => Math.ceil(moment - tolerance) - 1;
  const asStart = (moment: number) => Math.floor(moment + tolerance);
  const known = finish.percentiles.map((each) => ({ day: each.day, date: dayNumber(each.date) - start }));
  const agrees = (read: (moment: number) => number) =>
    known.filter(({ day, date }) => read(day) === date).length;
  const read = agrees(asStart) > agrees(asFinish) ? asStart : asFinish;
  return (moment) => {
    const below = known.findLast(({ day }) => day <= moment);
    const above = known.find(({ day }) => day >= moment);
    const least = below?.date ?? Number.NEGATIVE_INFINITY;
    return isoDate(start + Math.max(least, Math.min(above?.date ?? Number.POSITIVE_INFINITY, read(moment))));
  };
}
