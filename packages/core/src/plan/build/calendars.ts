import type { CalendarsDraft } from "../definition/draft.ts";
import type { CalendarDefinition, Holiday, Weekday } from "../types.ts";
import { must, present } from "./must.ts";

const WEEKDAYS: Weekday[] = ["mon", "tue", "wed", "thu", "fri"];
const EVERY_DAY: Weekday[] = [...WEEKDAYS, "sat", "sun"];

/** Every calendar by name with `like` resolved: own workdays replace, own holidays add. */
export function buildCalendars(drafts: CalendarsDraft | undefined): Map<string, CalendarDefinition> {
  const result = new Map<string, CalendarDefinition>([
    ["weekdays", { name: "weekdays", workdays: WEEKDAYS, holidays: [] }],
    ["every-day", { name: "every-day", workdays: EVERY_DAY, holidays: [] }],
  ]);
  const resolve = (name: string): CalendarDefinition => {
    const known = result.get(name);
    if (known !== undefined) return known;
    const draft = must(drafts?.get(name));
    const base = draft.like === undefined ? undefined : resolve(draft.like);
    const own = (draft.holidays ?? []).map((day): Holiday => {
      const from = must(day.from);
      return present({ from, to: day.to ?? from, name: day.name });
    });
    const holidays = [...(base?.holidays ?? []), ...own];
    const named = new Set<Weekday>(draft.workdays ?? base?.workdays ?? WEEKDAYS);
    const calendar = { name, workdays: EVERY_DAY.filter((day) => named.has(day)), holidays };
    result.set(name, calendar);
    return calendar;
  };
  for (const name of drafts?.keys() ?? []) resolve(name);
  return result;
}
