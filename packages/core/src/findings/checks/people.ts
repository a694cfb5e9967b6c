import { dayNumber } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { assignmentsOf } from "../../explain/people/assignments.ts";
import { loadBeyond } from "../../explain/people/loadAsWritten.ts";
import { weeksFrom } from "../../explain/people/weeks.ts";
import type { Check, CheckContext, Found } from "../context.ts";
import type { Written } from "../network/written.ts";
import { daysText } from "../words.ts";

/** People in the plan as written: too much asked, away in the middle, everything on one. */
export const checkPeople: Check = (context) => {
  const { written } = context;
  if (written === undefined || context.plan.people.length === 0) return [];
  return [...overFound(context, written), ...awayFound(context, written), ...oneFound(context, written)];
};

function overFound({ plan }: CheckContext, written: Written): Found[] {
  const { model } = written;
  const weeks = weeksFrom(model.startDay);
  const tasks = assignmentsOf(model);
  return model.people.flatMap((person, p): Found[] => {
    const spans = (tasks[p] ?? []).flatMap(({ task, share }) => {
      const at = written.tasks.get(task.id);
      if (at === undefined || !at.needed || task.progress?.finished === true) return [];
      return [{ start: at.start, finish: at.finish, calendar: task.calendar, share }];
    });
    if (spans.length === 0) return [];
    const count = weeks.of(Math.max(...spans.map(({ finish }) => finish))) + 1;
    const { over } = loadBeyond(person, model.planCalendar, spans, weeks, count);
    const sum = over.reduce((total, days) => total + days, 0);
    if (sum <= tolerance) return [];
    const first = over.findIndex((days) => days > tolerance);
    const at = plan.people.findIndex(({ id }) => id === person.id);
    const says = `${person.name} is asked for ${Math.round(sum * 10) / 10} person-days more than there are, first in the week of ${weeks.monday(first)}.`;
    return [{ code: "over-allocated", path: `people[${at}]`, ids: [person.id], says }];
  });
}

function awayFound({ plan, work }: CheckContext, written: Written): Found[] {
  const people = new Map(plan.people.map((person) => [person.id, person]));
  return work.flatMap(({ task, path }) => {
    const at = written.tasks.get(task.id);
    const model = at === undefined ? undefined : written.model.tasks[at.at];
    if (at === undefined || model === undefined || !at.needed || at.duration <= tolerance) return [];
    const days = task.people
      .filter(({ along }) => !along)
      .flatMap(({ id }): Found[] => {
        const gone = (people.get(id)?.away ?? []).find(({ from, to, share }) => {
          const begins = dayNumber(from) - written.model.startDay;
          const ends = dayNumber(to) - written.model.startDay + 1;
          return share === 1 && begins > at.start + tolerance && ends < at.finish - tolerance;
        });
        if (gone === undefined) return [];
        const says = `${people.get(id)?.name} is away from ${gone.from} to ${gone.to}, in the middle of ${task.name}.`;
        return [
          {
            code: "away-in-task",
            path,
            ids: [task.id, id],
            says,
            ...(at.driving ? { severity: "warning" as const } : {}),
          },
        ];
      });
    return days;
  });
}

function oneFound({ work, plan }: CheckContext, written: Written): Found[] {
  const driving = work.filter(({ task }) => written.tasks.get(task.id)?.driving === true);
  const [first, ...rest] = driving;
  if (first === undefined || driving.length < 3) return [];
  const names = first.task.people.filter(
    ({ id, along }) =>
      !along && rest.every(({ task }) => task.people.some((other) => other.id === id && !other.along)),
  );
  return names.flatMap(({ id }): Found[] => {
    const at = plan.people.findIndex((person) => person.id === id);
    const person = plan.people[at];
    if (person === undefined || person.capacity >= 2) return [];
    const days = driving.reduce((sum, { task }) => sum + (written.tasks.get(task.id)?.duration ?? 0), 0);
    const says = `${person.name} is needed in all ${driving.length} tasks that set the finish, ${daysText(days)} in all.`;
    return [{ code: "path-on-one-person", path: `people[${at}]`, ids: [id], says }];
  });
}
