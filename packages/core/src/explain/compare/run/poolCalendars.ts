import type { WorkCalendar } from "../../../calendar/workCalendar.ts";
import type { Model } from "../../../simulate/model.ts";

/** Puts one calendar in place of all that hold the same days, over all models it is given. */
export type Pool = (model: Model) => Model;

/** Every compiled plan brings its own tables, a megabyte or more; of hybrids nearly all are the same. */
export function calendarPool(): Pool {
  const kept = new Map<string, WorkCalendar[]>();
  return (model) => {
    const known = new Map<WorkCalendar, WorkCalendar>();
    const pooled = (calendar: WorkCalendar): WorkCalendar => {
      const found = known.get(calendar);
      if (found !== undefined) return found;
      const key = `${calendar.everyDay} ${calendar.last}`;
      const list = kept.get(key) ?? [];
      kept.set(key, list);
      let same = list.find((other) => equal(other, calendar));
      if (same === undefined) {
        same = calendar;
        list.push(calendar);
      }
      known.set(calendar, same);
      return same;
    };
    return {
      ...model,
      planCalendar: pooled(model.planCalendar),
      tasks: model.tasks.map((task) => ({
        ...task,
        calendar: pooled(task.calendar),
        ownCalendar: pooled(task.ownCalendar),
        unbroken: task.unbroken && pooled(task.unbroken),
        links: task.links.map((link) => ({ ...link, lagCalendar: pooled(link.lagCalendar) })),
      })),
    };
  };
}

function equal(a: WorkCalendar, b: WorkCalendar): boolean {
  // The days of the working days say everything; `cum` follows from them.
  if (a.nth.length !== b.nth.length) return false;
  for (let k = 0; k < a.nth.length; k++) if (a.nth[k] !== b.nth[k]) return false;
  return a.cum[a.cum.length - 1] === b.cum[b.cum.length - 1];
}
