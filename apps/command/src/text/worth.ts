import { formatDate, formatMoney, formatPercent, roundSignificant } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { wrap } from "./page.ts";

const SHOWN = 3;

const months = "January February March April May June July August September October November December".split(
  " ",
);

function monthName(month: string): string {
  return `${months[Number(month.slice(5, 7)) - 1] ?? month} ${month.slice(0, 4)}`;
}

/**
 * What surrounds the cost: what lateness costs, what the benefits are worth, when released money runs short, and
 * which durations move together. Only what the plan speaks of; every figure is the forecast's own.
 */
export function worthLines(forecast: Forecast, width: number): string[] {
  const sentences = [lateness(forecast), appraisal(forecast), funds(forecast), together(forecast)];
  return sentences.filter((text) => text !== undefined).flatMap((text) => wrap(text, width, "  "));
}

/** A mean or percentile without limits of its own: two significant digits. */
function roundSum(value: number, forecast: Forecast): string {
  return formatMoney(roundSignificant(value, 2), forecast.plan.currency);
}

function lateness(forecast: Forecast): string | undefined {
  const { lateness: late } = forecast;
  if (late === undefined) return undefined;
  const when = late.chance > 0 ? `, ${roundSum(late.meanWhenLate, forecast)} when it is late` : "";
  return (
    `Late after ${formatDate(late.after, "short")}: ${formatPercent(late.chance)}. Beside the total, being late costs ` +
    `${roundSum(late.mean, forecast)} on average${when}.`
  );
}

function appraisal(forecast: Forecast): string | undefined {
  const { appraisal: worth } = forecast;
  if (worth === undefined) return undefined;
  const { net, payback } = worth;
  const paid =
    payback.p50 === undefined
      ? `Half of the futures are not paid back within ${worth.years} years.`
      : `Half of the futures are paid back by ${formatDate(payback.p50, "short")}.`;
  return (
    `Worth over ${worth.years} years at ${Number((100 * worth.discountRate).toPrecision(4))} %, benefits discounted, cost not: ` +
    `${roundSum(net.mean, forecast)} on average, 8 in 10 between ${roundSum(net.p10, forecast)} and ` +
    `${roundSum(net.p90, forecast)}; above nought in ${formatPercent(worth.chancePositive)}. ${paid}`
  );
}

function funds(forecast: Forecast): string | undefined {
  const { firstShortfall, months: list } = forecast;
  if (list?.[0]?.released === undefined) return undefined;
  const level = formatPercent(forecast.committed.confidence);
  if (firstShortfall === undefined)
    return `Money released covers the cost of every month in at least ${level}.`;
  const covered = formatPercent(firstShortfall.chanceCovered);
  return `Money released first falls short of ${level} in ${monthName(firstShortfall.month)}: it covers ${covered}.`;
}

function together(forecast: Forecast): string | undefined {
  const stated = forecast.together ?? [];
  // Exactly nought is no figure of the futures: one of the two does not vary any more.
  const pairs = stated
    .filter(({ correlation }) => correlation !== 0)
    .sort(
      (a, b) =>
        Math.abs(b.correlation) - Math.abs(a.correlation) || (a.tasks.join() < b.tasks.join() ? -1 : 1),
    );
  if (stated.length === 0) return undefined;
  if (pairs.length === 0)
    return "No durations move together any more: of each pair in `correlations` one is settled.";
  const shown = pairs
    .slice(0, SHOWN)
    .map(({ tasks, correlation }) => `${tasks.join(" and ")} ${correlation.toFixed(2)}`);
  const more = pairs.length > SHOWN ? `; and ${pairs.length - SHOWN} weaker` : "";
  return `Durations that move together (correlation): ${shown.join(", ")}${more}.`;
}
