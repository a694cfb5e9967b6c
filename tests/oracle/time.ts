/**
 * Time as the page has it: a moment is a real number of days since the plan's start, day k covers [k, k + 1),
 * a working day holds one unit of work spread evenly, other days none. Everything here walks day by day.
 */

/** Does this day hold work? */
export type DayTest = (day: number) => boolean;

/** Moments, amounts of work and sums of shares that differ by at most this are equal. */
export const TOLERANCE = 1e-9;

/** A moment within the tolerance of a whole day is that whole day. */
export function snap(moment: number): number {
  const whole = Math.round(moment);
  return Math.abs(moment - whole) <= TOLERANCE ? whole : moment;
}

/** Units of work held in [from, to]; 0 when `to` is not after `from`. */
export function workBetween(works: DayTest, from: number, to: number): number {
  let sum = 0;
  for (let day = Math.floor(from); day < to; day++) {
    if (works(day)) sum += Math.max(0, Math.min(to, day + 1) - Math.max(from, day));
  }
  return sum;
}

/** Throws where the page says a plan is in error: an endless gap, or a moment past day 36,525. */
function guard(day: number, idleDays: number, who: string): void {
  if (idleDays > 366) throw new Error(`${who}: no working day within 366 days of day ${day - idleDays}`);
  if (day > 36_525) throw new Error(`${who}: a moment past day 36,525`);
}

/** The least moment t >= from such that [from, t] holds `amount` (>= 0) units; `from` itself for none. */
export function momentLater(works: DayTest, from: number, amount: number, who: string): number {
  let moment = snap(from);
  let left = amount;
  let idleDays = 0;
  while (left > TOLERANCE) {
    const day = Math.floor(moment);
    guard(day, idleDays, who);
    if (works(day)) {
      idleDays = 0;
      const room = day + 1 - moment;
      if (left <= room + TOLERANCE) return snap(moment + left);
      left -= room;
    } else {
      idleDays++;
    }
    moment = day + 1;
  }
  return moment;
}

/**
 * The greatest moment t <= from such that [t, from] holds `amount` (>= 0) units; never before 0, because no
 * bound is earlier than the plan's start.
 */
export function momentEarlier(works: DayTest, from: number, amount: number): number {
  let moment = snap(from);
  let left = amount;
  while (left > TOLERANCE && moment > 0) {
    const day = Math.ceil(moment) - 1;
    if (works(day)) {
      const room = moment - day;
      if (left <= room + TOLERANCE) return Math.max(0, snap(moment - left));
      left -= room;
    }
    moment = day;
  }
  return Math.max(0, moment);
}

/** `from` when it holds work, else the next moment that does. */
export function nextWorkingMoment(works: DayTest, from: number, who: string): number {
  const moment = snap(from);
  if (works(Math.floor(moment))) return moment;
  let day = Math.floor(moment) + 1;
  for (let idleDays = 1; !works(day); idleDays++, day++) guard(day, idleDays, who);
  return day;
}
