import { tolerance } from "../../calendar/tolerance.ts";
import type { WorkCalendar } from "../../calendar/workCalendar.ts";
import type { ModelPerson } from "../../simulate/model.ts";
import type { Weeks } from "./weeks.ts";

/** One task of a person in one plan: when, on what calendar, what part of the person. */
export interface Span {
  start: number;
  finish: number;
  calendar: WorkCalendar;
  share: number;
}
/** Person-days by week. */
export interface WeekLoad {
  over: Float64Array;
  away: Float64Array;
}

/** Capacity present by week, in person-days: the person's own calendar, absences out, nothing before the start. */
export function presentByWeek(person: ModelPerson, own: WorkCalendar, weeks: Weeks, count: number): number[] {
  return Array.from({ length: count }, (_, w) => {
    const first = weeks.begins(w);
    let sum = 0;
    for (let day = Math.max(0, first); day < first + 7; day++) sum += presentOn(person, own, day);
    return sum;
  });
}

/**
 * What is asked beyond the whole capacity (`over`), and within it while the person is away (`away`), moment by moment:
 * a busy Monday is not made good by an idle Friday. A task asks on the working days of its calendar only.
 *
 * @param own  The person's calendar, full absences left out.
 */
export function loadBeyond(
  person: ModelPerson,
  own: WorkCalendar,
  spans: readonly Span[],
  weeks: Weeks,
  count: number,
): WeekLoad {
  const over = new Float64Array(count);
  const away = new Float64Array(count);
  const edges = new Set<number>();
  for (const { start, finish } of spans) {
    if (finish - start <= tolerance) continue;
    edges.add(start).add(finish);
    for (let day = Math.ceil(start); day < finish; day++) edges.add(day);
  }
  const moments = [...edges].sort((a, b) => a - b);
  moments.forEach((from, i) => {
    const to = moments[i + 1];
    if (to === undefined || to - from <= tolerance) return;
    const middle = (from + to) / 2;
    const day = Math.floor(middle);
    let asked = 0;
    for (const { start, finish, calendar, share } of spans) {
      if (start < middle && middle < finish && works(calendar, day)) asked += share;
    }
    const w = weeks.of(middle);
    if (asked <= 0 || w >= count) return;
    const beyond = asked - person.capacity;
    const missing = Math.min(asked, person.capacity) - presentOn(person, own, day);
    if (beyond > tolerance) over[w] = (over[w] as number) + beyond * (to - from);
    if (missing > tolerance) away[w] = (away[w] as number) + missing * (to - from);
  });
  return { over, away };
}

/** Capacity present on a day. */
function presentOn(person: ModelPerson, own: WorkCalendar, day: number): number {
  if (!works(own, day)) return 0;
  const gone = person.partial.find(({ from, to }) => from <= day && day < to)?.gone ?? 0;
  return Math.max(0, person.capacity - gone);
}

export function works({ everyDay, cum }: WorkCalendar, day: number): boolean {
  return everyDay || (cum[day + 1] as number) > (cum[day] as number);
}
