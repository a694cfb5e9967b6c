import { uidOf } from "../exchange/calendar/uidOf.ts";
import type { CalendarEvent, Recurrence } from "../exchange/calendar/writeCalendar.ts";
import type { IsoDate, Plan } from "../plan/types.ts";
import type { Due, DueList } from "./types.ts";

/**
 * The due list as calendar events. A rhythm none of whose days was moved is one recurring event; otherwise every
 * occasion is an event of its own.
 */
export function dueEvents(plan: Plan, { due }: DueList): CalendarEvent[] {
  const by = new Map<string, Due[]>();
  for (const each of due) by.set(each.stakeholder.id, [...(by.get(each.stakeholder.id) ?? []), each]);
  return [...by].flatMap(([id, all]) => {
    const [first] = all;
    const every = first === undefined ? undefined : seriesOf(all);
    if (first !== undefined && every !== undefined) {
      return [{ uid: uidOf(plan, "inform", id), date: first.date, every, ...wordsOf(first) }];
    }
    return all.map((each): CalendarEvent => {
      const which = each.milestone?.id ?? each.movedFrom ?? each.date;
      return { uid: uidOf(plan, "inform", `${id}-${which}`), date: each.date, ...wordsOf(each) };
    });
  });
}

const RHYTHMS = {
  week: { unit: "week", interval: 1 },
  "two-weeks": { unit: "week", interval: 2 },
  month: { unit: "month", interval: 1 },
  quarter: { unit: "month", interval: 3 },
} as const;

/** How the occasions recur, where a rule of the standard says exactly them. */
function seriesOf(all: readonly Due[]): Recurrence | undefined {
  const [first] = all;
  if (first === undefined || all.length < 2 || first.every === "milestone") return undefined;
  if (all.some(({ movedFrom }) => movedFrom !== undefined)) return undefined;
  const { unit, interval } = RHYTHMS[first.every];
  // A rule leaves out months that have no such day (RFC 5545, 3.3.10); the plan means their last.
  if (unit === "month" && !all.every(({ date }) => dayOf(date) === dayOf(first.date) && dayOf(date) <= 28))
    return undefined;
  return { unit, interval, count: all.length };
}

function dayOf(date: IsoDate): number {
  return Number(date.slice(8, 10));
}

function wordsOf({
  stakeholder,
  owner,
  how,
  what,
  milestone,
}: Due): Pick<CalendarEvent, "summary" | "description" | "category"> {
  const about = milestone === undefined ? "" : `: ${milestone.name}`;
  const lines = [
    what,
    how === undefined ? undefined : `How: ${how}`,
    owner === undefined ? undefined : `Who: ${owner.name}`,
  ].filter((line) => line !== undefined);
  return {
    summary: `Inform ${stakeholder.name}${about}`,
    ...(lines.length > 0 && { description: lines.join("\n") }),
    category: "Communication",
  };
}
