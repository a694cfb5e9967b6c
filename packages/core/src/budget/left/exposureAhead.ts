import { dayNumber, isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { measureVariants } from "../../explain/measureVariants.ts";
import type { Draw } from "../../explain/variants.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Model } from "../../simulate/model.ts";
import type { ExposureAhead } from "./types.ts";
import { asWrittenFor, type Unsettled, whenSettled } from "./whenSettled.ts";

/** More points than this and they stand two, three, ... months apart. */
const mostPoints = 24;

/**
 * The exposure that would still be ahead at the end of each month, if everything until then went as written: the
 * percentile at the level with what is settled by then at its as-written values (entries that may occur: absent), less
 * the plan as written. It starts at the exposure of today and ends at nothing.
 *
 * It is not a forecast of the exposure: a plan that goes otherwise will have another. It says how fast the plan itself
 * lets go of what it holds.
 *
 * Cost: one run of the model's differences a point.
 */
export function exposureAhead(
  model: Model,
  asWritten: AsWritten,
  draw: Draw,
  confidence: number,
): ExposureAhead[] {
  const unsettled = whenSettled(model, asWritten);
  const today = model.statusDay ?? -1;
  const last = unsettled.reduce((latest, { at }) => Math.max(latest, at), today + 1);
  const days = [today, ...monthEnds(model, today, last)];
  const passed = days.map((day, i) => (i === 0 ? [] : unsettled.filter((one) => isBy(one, day))));
  const measures = measureVariants(
    model,
    draw,
    confidence,
    passed.map((settled) => asWrittenFor(model, settled)),
  );
  return days.map((day, i): ExposureAhead => {
    const [workingDays, money] = measures[i]?.level ?? [0, 0];
    const fresh = (passed[i] ?? []).filter((one) => !isBy(one, Math.max(today, days[i - 1] ?? today)));
    const idsOf = (kind: Unsettled["kind"]) => [
      ...new Set(fresh.filter((one) => one.kind === kind).map(({ id }) => id)),
    ];
    return {
      date: isoDate(model.startDay + day),
      exposure: { workingDays: workingDays - asWritten.workingDays, money: money - asWritten.cost },
      settles: { work: idsOf("work"), register: idsOf("register") },
    };
  });
}

function isBy({ at }: Unsettled, day: number): boolean {
  return at <= day + 1 + tolerance;
}

/** The last days of the months after `today`, as days since start, to the first that has `last` behind it. */
function monthEnds(model: Model, today: number, last: number): number[] {
  const ends: number[] = [];
  let [year, month] = isoDate(model.startDay + today + 1)
    .split("-")
    .map(Number) as [number, number];
  do {
    month += 1;
    if (month > 12) {
      month = 1;
      year += 1;
    }
    const next = `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-01`;
    ends.push(dayNumber(next) - 1 - model.startDay);
  } while ((ends.at(-1) as number) + 1 < last - tolerance);
  const apart = Math.ceil(ends.length / mostPoints);
  return ends.filter((_, i) => (ends.length - 1 - i) % apart === 0);
}
