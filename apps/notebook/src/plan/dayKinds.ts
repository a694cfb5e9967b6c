import type { Plan } from "@leeway/core";
import { dayOf, weekdayOf } from "./days.ts";

/** Whose days are looked at: a calendar by name, or a person by id. */
export type Whose = { calendar: string } | { person: string };

/** What a day is, and why, in words. `away`: a person's own absence; `part`: of a part of them. */
export interface DayKind {
  kind: "work" | "rest" | "holiday" | "away" | "part";
  why?: string;
}

const weekdays = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
export const weekdayNames = [
  "Monday",
  "Tuesday",
  "Wednesday",
  "Thursday",
  "Friday",
  "Saturday",
  "Sunday",
] as const;

/** A function that tells what each day is. Names of holidays and reasons of absences are said as the plan has them. */
export function dayKinds(plan: Plan, whose: Whose): (day: number) => DayKind {
  const person = "person" in whose ? plan.people.find(({ id }) => id === whose.person) : undefined;
  const calendar = plan.calendars.get(
    "calendar" in whose ? whose.calendar : (person?.calendar ?? plan.calendar),
  );
  const works = new Set(calendar?.workdays.map((day) => weekdays.indexOf(day)));
  const spans = <T extends { from: string; to: string }>(list: readonly T[] = []) =>
    list.map((one) => ({ one, from: dayOf(one.from), to: dayOf(one.to) }));
  const holidays = spans(calendar?.holidays);
  const away = spans(person?.away);
  const named = (name: string | undefined, or: string) => (name === undefined ? {} : { why: name || or });
  return (day) => {
    const here = away.filter(({ from, to }) => from <= day && day <= to).map(({ one }) => one);
    const whole = here.find(({ share }) => share === 1);
    if (whole !== undefined) return { kind: "away", ...named(whole.why, "") };
    const holiday = holidays.find(({ from, to }) => from <= day && day <= to);
    if (holiday !== undefined) return { kind: "holiday", ...named(holiday.one.name, "") };
    if (!works.has(weekdayOf(day))) return { kind: "rest" };
    const part = here.find(({ share }) => share > 0);
    if (part === undefined) return { kind: "work" };
    const share = `${Math.round(part.share * 100)} % away`;
    return { kind: "part", why: part.why === undefined ? share : `${share}, ${part.why}` };
  };
}

/** "Fri 2 Apr 2027 is a day off: Easter", for one day, to be read on its own. */
export function dayWords({ kind, why }: DayKind, whose: Whose): string {
  const beside = why === undefined ? "" : `: ${why}`;
  switch (kind) {
    case "work":
      return "working day";
    case "rest":
      return "no working day of the week";
    case "holiday":
      return `day off${"person" in whose ? " for all" : ""}${beside}`;
    case "away":
      return `away${beside}`;
    case "part":
      return beside.slice(2);
  }
}
