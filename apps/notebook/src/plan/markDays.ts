import { formatDate } from "@leeway/charts";
import type { Plan } from "@leeway/core";
import { type DayKind, dayKinds, type Whose } from "./dayKinds.ts";
import { isoOf } from "./days.ts";
import { listEdits, spanOf, withDays } from "./daysOff.ts";
import type { Edit } from "./edit.ts";
import { listAt } from "./removeTask.ts";
import { statedAt } from "./stated.ts";

const given = ["weekdays", "every-day"];

/** Where the days off of a calendar or a person stand in the document; undefined: a calendar that cannot be written to. */
export function daysPath(plan: Plan, whose: Whose): string | undefined {
  if ("person" in whose) return `people[${plan.people.findIndex(({ id }) => id === whose.person)}].away`;
  return given.includes(whose.calendar) || /[.[\]]/.test(whose.calendar)
    ? undefined
    : `calendars.${whose.calendar}.holidays`;
}

/** Place of the entry in the own list that holds a day; -1: none does. */
export function entryOf(plan: Plan, stated: unknown, whose: Whose, day: number): number {
  const path = daysPath(plan, whose);
  if (path === undefined) return -1;
  return listAt(stated, path).findIndex((entry) => {
    const span = spanOf(entry);
    return span !== undefined && span.from <= day && day <= span.to;
  });
}

/**
 * The edits that make days off, or working again. A calendar that always exists cannot change: the plan gets one of its
 * own that starts from it, in the same step.
 */
export function markDays(
  plan: Plan,
  stated: unknown,
  whose: Whose,
  days: { from: number; to: number },
  off: boolean,
): { edits: Edit[]; told: string } | { refused: string } {
  const { from, to } = days;
  const when =
    from === to
      ? `${formatDate(isoOf(from), "weekday")} is`
      : `${formatDate(isoOf(from), "weekday")} to ${formatDate(isoOf(to), "weekday")} are`;
  const what = !off
    ? "free of it again"
    : "person" in whose
      ? "away"
      : from === to
        ? "a day off"
        : "days off";
  const told = off
    ? `${when} ${what}. Undo takes it back.`
    : `${when} no longer ${"person" in whose ? "away" : "off"}. Undo takes it back.`;
  const path = daysPath(plan, whose);
  if (path === undefined) {
    if (!off || "person" in whose) return { refused: "" };
    return ownCalendar(plan, stated, whose.calendar, { holidays: withDays([], from, to, true) }, told);
  }
  const next = withDays(listAt(stated, path), from, to, off);
  const edits = listEdits(stated, path, next);
  if (edits.length > 0) return { edits, told };
  const kind = dayKinds(plan, whose)(from);
  return { refused: `${when} not changed: ${fixedWords(kind, whose)}` };
}

/** Why a day cannot be made a working day here. */
export function fixedWords({ kind, why }: DayKind, whose: Whose): string {
  if (kind === "rest")
    return "person" in whose
      ? "their calendar holds no work on that day of the week."
      : "this calendar holds no work on that day of the week. Tick the day below to work on it every week.";
  if (kind === "holiday")
    return "person" in whose
      ? `it is a day off for everybody on that calendar${why === undefined ? "" : `, ${why}`}. Choose the calendar to change it.`
      : `it comes from the calendar that this one starts from${why === undefined ? "" : `, ${why}`}. Choose that one to change it.`;
  return "it is so already.";
}

/** Which days of the week hold work, in a calendar. */
export function markWorkdays(
  plan: Plan,
  stated: unknown,
  calendar: string,
  workdays: readonly string[],
): { edits: Edit[]; told: string } | { refused: string } {
  if (workdays.length === 0) return { refused: "One day of the week has to hold work." };
  const told = "The days of the week are changed. Undo takes it back.";
  const path = daysPath(plan, { calendar });
  if (path === undefined) return ownCalendar(plan, stated, calendar, { workdays: [...workdays] }, told);
  return { edits: [{ path: path.replace(/holidays$/, "workdays"), value: [...workdays] }], told };
}

function ownCalendar(
  plan: Plan,
  stated: unknown,
  like: string,
  beside: Record<string, unknown>,
  told: string,
): { edits: Edit[]; told: string } | { refused: string } {
  if (!given.includes(like))
    return {
      refused: `The name “${like}” has a dot or a bracket in it: change this calendar in the plan's text.`,
    };
  if (like !== plan.calendar)
    return {
      refused: `“${like}” is not the plan's own calendar: give the plan another one first, in its text.`,
    };
  let name = "project";
  for (let count = 2; plan.calendars.has(name); count++) name = `project-${count}`;
  const calendar = { like, ...beside };
  const edits: Edit[] = [
    statedAt(stated, "calendars") === undefined
      ? { path: "calendars", value: { [name]: calendar } }
      : { path: `calendars.${name}`, value: calendar },
    { path: "calendar", value: name },
  ];
  return {
    edits,
    told: `${told.replace(/ Undo.*/, "")} “${like}” always stays as it is, so the plan has a calendar of its own now, “${name}”. Undo takes it back.`,
  };
}
